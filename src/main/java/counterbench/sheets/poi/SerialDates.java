package counterbench.sheets.poi;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * Days as workbooks count them (ECMA-376 part 1, 18.17.4): 1 is 1900-01-01 and 61 is 1900-03-01,
 * because 60 stands for a 29 February 1900 that there was not; or 0 is 1904-01-01. The fraction is
 * the time of day, and is rounded to the millisecond, since 15 digits tell no less. Days before
 * 1900-03-01 are not taken: programs differ on them.
 */
final class SerialDates {
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final int FROM_1904 = 1462;
    private static final BigDecimal FIRST = BigDecimal.valueOf(61);
    private static final BigDecimal END = BigDecimal.valueOf(2_958_466);
    private static final BigDecimal MILLIS_OF_DAY = BigDecimal.valueOf(86_400_000);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss[.SSS]", Locale.ROOT);

    private SerialDates() {}

    /** The day, with its time if it is shown with one or has one, in ISO 8601. */
    static Optional<String> text(BigDecimal serial, boolean from1904, boolean showsTime) {
        if (serial.precision() - serial.scale() > 8) {
            return Optional.empty();
        }
        BigDecimal counted = from1904 ? serial.add(BigDecimal.valueOf(FROM_1904)) : serial;
        if (counted.compareTo(FIRST) < 0 || counted.compareTo(END) >= 0) {
            return Optional.empty();
        }
        LocalDateTime time = time(counted);
        boolean day = !showsTime && time.toLocalTime().toNanoOfDay() == 0;
        return Optional.of(day ? time.toLocalDate().toString() : written(time));
    }

    private static LocalDateTime time(BigDecimal counted) {
        BigDecimal millis = counted.multiply(MILLIS_OF_DAY).setScale(0, RoundingMode.HALF_UP);
        return DAY_ZERO.atStartOfDay().plus(millis.longValueExact(), ChronoUnit.MILLIS);
    }

    private static String written(LocalDateTime time) {
        String text = TIME.format(time);
        return text.endsWith(".000") ? text.substring(0, text.length() - 4) : text;
    }
}
