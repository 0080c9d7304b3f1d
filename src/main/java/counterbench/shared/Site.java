package counterbench.shared;

import counterbench.shared.units.Weight;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Currency;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One workshop.
 *
 * @param no the number that its keys in the store begin with, 1 to 1023
 * @param site the short name that people type
 * @param name the full name
 * @param zone the time zone in which its days and months begin
 * @param currency what its money is counted in
 * @param patience how long the site waits before it is reminded
 * @param companyPrefix the digits with which its GS1 numbers begin; null where it has none
 * @param shipmentLimit the most that it lets a shipment weigh; null where it sets no limit
 */
public record Site(
        int no,
        String site,
        String name,
        ZoneId zone,
        Currency currency,
        Patience patience,
        @Nullable String companyPrefix,
        @Nullable Weight shipmentLimit) {
    public Site {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(patience, "patience");
        if (no < 1 || no > 1023) {
            throw new IllegalArgumentException("site number " + no + " is not between 1 and 1023");
        }
    }

    /** A site without a company prefix. */
    public Site(
            int no, String site, String name, ZoneId zone, Currency currency, Patience patience) {
        this(no, site, name, zone, currency, patience, null);
    }

    /** A site without a limit for shipments. */
    public Site(
            int no,
            String site,
            String name,
            ZoneId zone,
            Currency currency,
            Patience patience,
            @Nullable String companyPrefix) {
        this(no, site, name, zone, currency, patience, companyPrefix, null);
    }

    /** The same site with another limit for shipments; null for none. */
    public Site limited(@Nullable Weight limit) {
        return new Site(no, site, name, zone, currency, patience, companyPrefix, limit);
    }

    /**
     * Days after which an open job, an unacknowledged shipment and an unpaid claim are worth a
     * word.
     */
    public record Patience(int jobDays, int acknowledgementDays, int creditDays) {
        /** What holds unless the site says otherwise. */
        public static final Patience USUAL = new Patience(14, 21, 45);
    }

    /** The site's calendar day at an instant. */
    public LocalDate dayOf(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    /** The site's calendar month at an instant. */
    public YearMonth monthOf(Instant at) {
        return YearMonth.from(dayOf(at));
    }

    /** The first instant of a day at the site. */
    public Instant startOf(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** The instant at which a day at the site is over, which is the first of the next. */
    public Instant endOf(LocalDate day) {
        return startOf(day.plusDays(1));
    }

    /**
     * A time as the site's clocks show it, to the minute; with its offset where they show it twice.
     */
    public String wallTime(Instant at) {
        LocalDateTime local = LocalDateTime.ofInstant(at, zone).truncatedTo(ChronoUnit.MINUTES);
        boolean once = zone.getRules().getValidOffsets(local).size() == 1;
        String text = local.toLocalDate() + " " + local.toLocalTime();
        return once ? text : text + zone.getRules().getOffset(at);
    }
}
