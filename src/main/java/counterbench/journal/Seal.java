package counterbench.journal;

import java.time.Instant;
import java.time.YearMonth;
import java.util.Objects;

/**
 * The closing of a month.
 *
 * @param entry the number of the entry that closed it; what later ones say is not in the month
 * @param at as of when the month was judged
 */
public record Seal(YearMonth month, long entry, Instant at) {
    public Seal {
        Objects.requireNonNull(month, "month");
        Objects.requireNonNull(at, "at");
    }
}
