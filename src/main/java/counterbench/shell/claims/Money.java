package counterbench.shell.claims;

import java.math.BigDecimal;
import java.util.Collection;

/** Money as rows show it. */
final class Money {
    private Money() {}

    /** Exact, with two digits at least. */
    static String text(BigDecimal amount) {
        BigDecimal plain = amount.stripTrailingZeros();
        return (plain.scale() < 2 ? plain.setScale(2) : plain).toPlainString();
    }

    /** The sum of amounts. */
    static BigDecimal sum(Collection<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
