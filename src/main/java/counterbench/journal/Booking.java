package counterbench.journal;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Optional;

/**
 * The month in which a fact counts for goods and workbooks: that in which it happened, at its site.
 */
public final class Booking {
    private Booking() {}

    /** The fact's month; empty for facts that do not move goods. */
    public static Optional<YearMonth> of(Site site, FactRow row) {
        return happenedAt(row).map(site::monthOf);
    }

    private static Optional<Instant> happenedAt(FactRow row) {
        if (row.kind() == FactKind.KITS) {
            return Optional.ofNullable(row.time("received_at"));
        }
        return row.kind().time().map(row::time);
    }
}
