package counterbench.acts.rack;

import counterbench.acts.ShipmentState;
import counterbench.shared.Refused;
import counterbench.shared.Site;

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
}
