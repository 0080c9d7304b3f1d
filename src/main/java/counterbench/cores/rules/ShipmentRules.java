package counterbench.cores.rules;

import counterbench.cores.ShipmentFacts;
import counterbench.judgement.Judge;
import java.util.List;

/** The rules that judge one shipment. */
public final class ShipmentRules {
    /** All of them. */
    public static final List<Judge<ShipmentFacts>> ALL = List.of(new AcknowledgementStray());

    private ShipmentRules() {}
}
