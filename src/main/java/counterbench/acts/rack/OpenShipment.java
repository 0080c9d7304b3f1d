package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Shipment;
import counterbench.acts.Situation;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;

/** Opens a shipment, onto which cores can be put. */
public record OpenShipment(Shipment shipment) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.SHIPMENTS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withShipment(shipment.shipment());
    }

    @Override
    public Decision decide(Situation situation) {
        situation
                .directory()
                .shipment(shipment.shipment())
                .ifPresent(
                        known -> {
                            throw new Refused(
                                    "shipment \"" + known.shipment() + "\"",
                                    "there is one of that name, with "
                                            + known.carrier()
                                            + ", "
                                            + known.tracking(),
                                    "give this one a name of its own, or add to that one");
                        });
        return Decision.of(shipment.row());
    }
}
