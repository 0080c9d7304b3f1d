package counterbench.cores;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Lengths of drain periods, exact, as messages write them. */
public final class Minutes {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

    private Minutes() {}

    /** Whether a time is shorter than so many minutes. */
    public static boolean isShorter(Duration length, BigDecimal minutes) {
        return seconds(length).compareTo(minutes.multiply(SECONDS)) < 0;
    }

    /** So many minutes, as in {@code 18 min}. */
    public static String text(BigDecimal minutes) {
        return plain(minutes) + " min";
    }

    /** A length of time, as in {@code 12 min 30 s}; what is less than a second is left out. */
    public static String text(Duration length) {
        BigDecimal[] parts = BigDecimal.valueOf(length.toSeconds()).divideAndRemainder(SECONDS);
        String rest = parts[1].signum() == 0 ? "" : " " + plain(parts[1]) + " s";
        return text(parts[0]) + rest;
    }

    /** So many minutes as a length of time, cut to a billionth of a second. */
    public static Duration length(BigDecimal minutes) {
        return Duration.ofNanos(minutes.multiply(SECONDS).movePointRight(9).longValue());
    }

    /** A length of time in minutes, to three places. */
    public static BigDecimal number(Duration length) {
        return seconds(length).divide(SECONDS, 3, RoundingMode.HALF_EVEN);
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
