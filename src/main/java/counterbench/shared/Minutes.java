package counterbench.shared;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Lengths of time that are asked for and kept, exact, and as messages write them. What was kept is
 * cut and what is asked for is rounded up, so that too short a time never reads as long enough.
 */
public final class Minutes {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

    /** From here on hours are written, and seconds no more. */
    private static final Duration LONG = Duration.ofHours(1);

    /** From here on days are written, and minutes no more. */
    private static final Duration VERY_LONG = Duration.ofDays(1);

    private Minutes() {}

    /** Whether a time is shorter than so many minutes. */
    public static boolean isShorter(Duration length, BigDecimal minutes) {
        return seconds(length).compareTo(minutes.multiply(SECONDS)) < 0;
    }

    /**
     * So many minutes that are asked for: {@code 18 min}, {@code 4.5 min}, {@code 1 h 30 min}; of
     * parts of a second a whole one is made.
     */
    public static String text(BigDecimal minutes) {
        return text(minutes, RoundingMode.CEILING);
    }

    /** So many minutes as somebody read them off a clock, to the nearest second. */
    public static String read(BigDecimal minutes) {
        return text(minutes, RoundingMode.HALF_UP);
    }

    private static String text(BigDecimal minutes, RoundingMode rounding) {
        BigDecimal number = minutes.stripTrailingZeros();
        if (number.scale() <= 1 && number.compareTo(SECONDS) < 0) {
            return plain(number) + " min";
        }
        BigDecimal seconds = minutes.multiply(SECONDS).setScale(0, rounding);
        return full(Duration.ofSeconds(seconds.longValue()));
    }

    /**
     * A length of time for the eye: {@code 12 min 30 s}, {@code 1 h 29 min}, {@code 230 days 14 h}.
     * What is less than the last part is left out.
     */
    public static String text(Duration length) {
        if (length.compareTo(LONG) < 0) {
            return full(length);
        }
        return full(
                length.truncatedTo(
                        length.compareTo(VERY_LONG) < 0 ? ChronoUnit.MINUTES : ChronoUnit.HOURS));
    }

    /** The same with all its parts down to the second. */
    public static String full(Duration length) {
        long days = length.toDays();
        String text =
                part(days, days == 1 ? "day" : "days")
                        + part(length.toHoursPart(), "h")
                        + part(length.toMinutesPart(), "min")
                        + part(length.toSecondsPart(), "s");
        return text.isEmpty() ? "0 min" : text.strip();
    }

    private static String part(long number, String unit) {
        return number == 0 ? "" : " " + number + " " + unit;
    }

    /** So many minutes as a length of time, cut to a billionth of a second. */
    public static Duration length(BigDecimal minutes) {
        return Duration.ofNanos(minutes.multiply(SECONDS).movePointRight(9).longValue());
    }

    /** A length of time in minutes, cut to three places. */
    public static BigDecimal number(Duration length) {
        BigDecimal number = seconds(length).divide(SECONDS, 3, RoundingMode.DOWN);
        return new BigDecimal(plain(number));
    }

    /** The full minute at which a moment is certainly over, for clocks without seconds. */
    public static Instant over(Instant moment) {
        Instant minute = moment.truncatedTo(ChronoUnit.MINUTES);
        return minute.equals(moment) ? moment : minute.plus(1, ChronoUnit.MINUTES);
    }

    private static BigDecimal seconds(Duration length) {
        return BigDecimal.valueOf(length.getSeconds()).add(BigDecimal.valueOf(length.getNano(), 9));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
