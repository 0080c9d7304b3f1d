package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;

/** Takes cores off a shipment that has not left. */
public record TakeOffShipment(String shipment, List<String> tags, Stamp stamp) implements Act {
    public TakeOffShipment {
        tags = tags.stream().distinct().toList();
    }

    @Override
    public FactKind makes() {
        return FactKind.CORES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withShipment(shipment).withCores(tags);
    }

    @Override
    public Decision decide(Situation situation) {
        ShipmentState from = situation.shipment(shipment);
        OnShipment.refuseAfterLeaving(from, situation.site());
        List<FactRow> rows = new ArrayList<>();
        for (String tag : tags) {
            Handled core = Handled.of(tag, situation, stamp);
            if (from.find(tag).isEmpty()) {
                throw new Refused(
                        core.asked() + " off shipment " + shipment,
                        "it is not on it",
                        "shipment show " + shipment + " lists those that are");
            }
            core.refuseBeforeLastAct("taken off");
            rows.add(core.row(CoreEvent.Kind.TAKEN_OFF).with("shipment", shipment));
        }
        return new Decision(rows, List.of());
    }
}
