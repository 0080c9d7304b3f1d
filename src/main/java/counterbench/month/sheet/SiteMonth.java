package counterbench.month.sheet;

import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;

/** A month of a site, from midnight to midnight of its own time. */
public record SiteMonth(Site site, YearMonth month) {
    public SiteMonth {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(month, "month");
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

    /** Whether a day lies in it. */
    public boolean contains(LocalDate day) {
        return YearMonth.from(day).equals(month);
    }

    /** Whether an instant lies in it or before. */
    public boolean isBeforeEnd(Instant at) {
        return at.isBefore(end());
    }
}
