package counterbench.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.regex.Pattern;

/** Reads times of the paper and tells days and months of the site. */
record SiteClock(ZoneId zone) {

    private static final Pattern OFFSET = Pattern.compile(".*(Z|[+-]\\d\\d:\\d\\d)$");

    Instant instant(String text) {
        String iso = text.strip().replace(' ', 'T');
        return OFFSET.matcher(iso).matches()
                ? OffsetDateTime.parse(iso).toInstant()
                : LocalDateTime.parse(iso).atZone(zone).toInstant();
    }

    LocalDate day(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    YearMonth month(Instant at) {
        return YearMonth.from(day(at));
    }

    /** The midnight that ends the day. */
    Instant end(LocalDate day) {
        return day.plusDays(1).atStartOfDay(zone).toInstant();
    }
}
