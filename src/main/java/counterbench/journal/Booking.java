package counterbench.journal;

import counterbench.facts.FactRow;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The month in which a fact counts for goods and workbooks: that in which it happened, at its site,
 * or the first open one where that is sealed.
 */
public final class Booking {
    private static final List<String> ASKED =
            List.of("labour_amount", "parts_amount", "core_charge");

    private Booking() {}

    /** The fact's month; empty for facts that no month's account reads. */
    public static Optional<YearMonth> of(Site site, FactRow row, SealedMonths sealed) {
        return happenedIn(site, row).map(sealed::firstOpen);
    }

    /** The month in which it happened; empty for facts that no month's account reads. */
    public static Optional<YearMonth> happenedIn(Site site, FactRow row) {
        return switch (row.kind()) {
            case KITS -> month(site, row.time("received_at"));
            case JOBS -> month(site, row.time("completed_at"));
            case CLAIMS -> month(dayOfClaim(row));
            case CREDITS -> month(row.date("paid_on"));
            default -> row.kind().time().flatMap(heading -> month(site, row.time(heading)));
        };
    }

    /** A row that asks no amount and says that the claim fell happened when it did. */
    private static @Nullable LocalDate dayOfClaim(FactRow row) {
        boolean asks = ASKED.stream().anyMatch(heading -> row.get(heading) != null);
        LocalDate withdrawn = row.date("withdrawn_on");
        LocalDate fell = withdrawn == null ? row.date("denied_on") : withdrawn;
        return asks || fell == null ? row.date("submitted_on") : fell;
    }

    private static Optional<YearMonth> month(Site site, @Nullable Instant at) {
        return Optional.ofNullable(at).map(site::monthOf);
    }

    private static Optional<YearMonth> month(@Nullable LocalDate day) {
        return Optional.ofNullable(day).map(YearMonth::from);
    }
}
