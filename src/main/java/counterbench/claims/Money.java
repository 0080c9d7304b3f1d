package counterbench.claims;

import java.math.BigDecimal;
import java.util.Collection;

/** Amounts of money as rows and reasons show them, without their currency. */
public final class Money {
    private Money() {}

    /** Exact, with two digits at least. */
    public static String text(BigDecimal amount) {
        BigDecimal plain = amount.stripTrailingZeros();
        return (plain.scale() < 2 ? plain.setScale(2) : plain).toPlainString();
    }

    /** The sum of amounts. */
    public static BigDecimal sum(Collection<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
