package counterbench.oracle;

import java.time.ZoneId;

/** The site whose paper is read; patience in days. */
public record OracleSite(
        String name,
        ZoneId zone,
        String currency,
        int idleDays,
        int acknowledgeDays,
        int unpaidDays) {

    /** A site with the patience that holds where none is set: 14, 21 and 45 days. */
    public static OracleSite of(String name, String zone, String currency) {
        return new OracleSite(name, ZoneId.of(zone), currency, 14, 21, 45);
    }

    SiteClock clock() {
        return new SiteClock(zone);
    }
}
