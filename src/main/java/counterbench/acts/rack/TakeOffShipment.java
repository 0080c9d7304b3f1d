package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import java.util.List;

/** Takes cores off a shipment with which they have not left. */
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
        return new Decision(
                OnShipment.rows(
                        shipment,
                        tags,
                        CoreEvent.Kind.TAKEN_OFF,
                        stamp,
                        situation,
                        core -> refuseWhereItIsNot(core, from)),
                List.of());
    }

    private void refuseWhereItIsNot(Handled core, ShipmentState from) {
        if (from.find(core.tag()).isEmpty()) {
            throw new Refused(
                    core.asked() + " off shipment " + shipment,
                    "it is not on it",
                    "shipment show " + shipment + " lists those that are");
        }
        if (core.history().openPlacement().isEmpty()) {
            OnShipment.refuseAfterLeaving(from, core.site());
        }
        core.refuseBeforeLastAct("taken off");
    }
}
