package counterbench.acts;

import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.time.Instant;
import java.util.Objects;

/**
 * When an act happened and who did it; every fact of the act bears both.
 *
 * @param at cut to what the store holds
 */
public record Stamp(Instant at, String by) {
    public Stamp {
        at = Canonical.cut(at);
        Objects.requireNonNull(by, "by");
    }

    /** A row of a kind that bears the stamp and says nothing else yet. */
    public FactRow row(FactKind kind) {
        return FactRow.of(kind).with(timeOf(kind), at).with("by", by);
    }

    private static String timeOf(FactKind kind) {
        return kind == FactKind.KITS ? "received_at" : kind.time().orElseThrow();
    }
}
