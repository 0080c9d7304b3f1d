package counterbench.acts.rack;

import counterbench.acts.ShipmentState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.List;
import java.util.function.Consumer;

/** What holds for all that is done to a shipment. */
final class OnShipment {
    private OnShipment() {}

    /**
     * Refuses to change a shipment that has left.
     *
     * @throws Refused if it has
     */
    static void refuseAfterLeaving(ShipmentState shipment, Site site) {
        shipment.shippedAt()
                .ifPresent(
                        left -> {
                            throw new Refused(
                                    "shipment \"" + shipment.name() + "\"",
                                    "it left at " + site.wallTime(left),
                                    "open another one: shipment open");
                        });
    }

    /**
     * The facts that something was done to cores of a shipment that has not left. A core that did
     * not leave with it can still be taken off.
     *
     * @param check refuses a core with which it cannot be done
     * @throws Refused if the shipment has left, or for one of the cores
     */
    static List<FactRow> rows(
            String shipment,
            List<String> tags,
            CoreEvent.Kind done,
            Stamp stamp,
            Situation situation,
            Consumer<Handled> check) {
        boolean onPaper = done == CoreEvent.Kind.TAKEN_OFF;
        if (!onPaper) {
            refuseAfterLeaving(situation.shipment(shipment), situation.site());
        }
        return tags.stream()
                .map(
                        tag ->
                                onPaper
                                        ? Handled.onPaper(tag, situation, stamp)
                                        : Handled.of(tag, situation, stamp))
                .map(
                        core -> {
                            check.accept(core);
                            return core.row(done).with("shipment", shipment);
                        })
                .toList();
    }
}
