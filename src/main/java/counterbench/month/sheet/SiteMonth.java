package counterbench.month.sheet;

import counterbench.journal.SealedMonths;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A month of a site, from midnight to midnight of its own time.
 *
 * @param sealed the months that are closed; what is recorded of them later is booked in the first
 *     open one
 */
public record SiteMonth(Site site, YearMonth month, SealedMonths sealed) {
    public SiteMonth {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(month, "month");
        Objects.requireNonNull(sealed, "sealed");
    }

    /** Of a site that never sealed a month. */
    public SiteMonth(Site site, YearMonth month) {
        this(site, month, SealedMonths.NONE);
    }

    /** The first instant. */
    public Instant start() {
        return site.startOf(month.atDay(1));
    }

    /** The instant at which it is over. */
    public Instant end() {
        return site.endOf(lastDay());
    }

    /** The last day. */
    public LocalDate lastDay() {
        return month.atEndOfMonth();
    }

    /** Whether an instant lies in it. */
    public boolean contains(Instant at) {
        return !at.isBefore(start()) && isBeforeEnd(at);
    }

    /** Whether a fact of an instant is booked in it. */
    public boolean books(Instant at, @Nullable Address fact) {
        return month.equals(sealed.booked(site.monthOf(at), entry(fact)));
    }

    /** Whether a fact of a day is booked in it. */
    public boolean books(LocalDate day, @Nullable Address fact) {
        return month.equals(sealed.booked(YearMonth.from(day), entry(fact)));
    }

    private static long entry(@Nullable Address fact) {
        return fact == null ? 0 : fact.entry();
    }

    /** Whether an instant lies in it or before. */
    public boolean isBeforeEnd(Instant at) {
        return at.isBefore(end());
    }
}
