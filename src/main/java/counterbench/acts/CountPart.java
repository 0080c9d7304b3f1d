package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.shared.Quantity;

/** Writes down how much of a loose part was found in the store. */
public record CountPart(String part, Quantity quantity, Stamp stamp) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.COUNTS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withPart(part);
    }

    @Override
    public Decision decide(Situation situation) {
        Parts parts = Parts.of(situation);
        parts.mustBeLoose(part);
        parts.mustBeWhole(part, quantity);
        return Decision.of(
                stamp.row(FactKind.COUNTS).with("part", part).with("quantity", quantity.amount()));
    }
}
