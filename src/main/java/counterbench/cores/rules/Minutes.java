package counterbench.cores.rules;

import java.math.BigDecimal;
import java.time.Duration;

/** Lengths of drain periods, exact, as messages write them. */
final class Minutes {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

    private Minutes() {}

    static boolean isShorter(Duration length, BigDecimal minutes) {
        return seconds(length).compareTo(minutes.multiply(SECONDS)) < 0;
    }

    static String text(BigDecimal minutes) {
        return plain(minutes) + " min";
    }

    static String text(Duration length) {
        BigDecimal[] parts = seconds(length).divideAndRemainder(SECONDS);
        String rest = parts[1].signum() == 0 ? "" : " " + plain(parts[1]) + " s";
        return text(parts[0]) + rest;
    }

    private static BigDecimal seconds(Duration length) {
        return BigDecimal.valueOf(length.getSeconds()).add(BigDecimal.valueOf(length.getNano(), 9));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
