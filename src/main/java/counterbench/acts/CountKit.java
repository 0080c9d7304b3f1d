package counterbench.acts;

import counterbench.facts.FactKind;
import java.math.BigDecimal;

/** Writes down whether a kit was found on the shelf. */
public record CountKit(String kit, boolean present, Stamp stamp) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.COUNTS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withKit(kit);
    }

    @Override
    public Decision decide(Situation situation) {
        situation.kit(kit);
        return Decision.of(
                stamp.row(FactKind.COUNTS)
                        .with("kit", kit)
                        .with("quantity", present ? BigDecimal.ONE : BigDecimal.ZERO));
    }
}
