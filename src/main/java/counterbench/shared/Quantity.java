package counterbench.shared;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * An exact amount of a part, to three decimal places: pieces, millilitres or grams as the part's
 * unit says. May be negative, as balances can be.
 */
public record Quantity(BigDecimal amount) implements Comparable<Quantity> {
    /** Decimal places that quantities carry. */
    public static final int SCALE = 3;

    /** Nothing. */
    public static final Quantity ZERO = new Quantity(BigDecimal.ZERO);

    /** One piece. */
    public static final Quantity ONE = new Quantity(BigDecimal.ONE);

    /**
     * @throws ArithmeticException if the amount has more than three decimal places
     */
    public Quantity {
        Objects.requireNonNull(amount, "amount");
        amount = amount.setScale(SCALE);
    }

    /** The quantity written as a plain decimal, such as {@code 3.5}. */
    public static Quantity of(String amount) {
        return new Quantity(new BigDecimal(amount));
    }

    /** A whole number of pieces. */
    public static Quantity of(long amount) {
        return new Quantity(BigDecimal.valueOf(amount));
    }

    /** This and the other together. */
    public Quantity plus(Quantity other) {
        return new Quantity(amount.add(other.amount));
    }

    /** What is left of this without the other. */
    public Quantity minus(Quantity other) {
        return new Quantity(amount.subtract(other.amount));
    }

    /** This many times over. */
    public Quantity times(long count) {
        return new Quantity(amount.multiply(BigDecimal.valueOf(count)));
    }

    /** The opposite amount. */
    public Quantity negate() {
        return new Quantity(amount.negate());
    }

    /** The smaller of the two. */
    public Quantity min(Quantity other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** −1, 0 or 1 as the amount is below, at or above zero. */
    public int signum() {
        return amount.signum();
    }

    /** Whether the amount is zero. */
    public boolean isZero() {
        return signum() == 0;
    }

    /** Whether the amount is above zero. */
    public boolean isPositive() {
        return signum() > 0;
    }

    /** Whether the amount is below zero. */
    public boolean isNegative() {
        return signum() < 0;
    }

    /** Whether this is less than the other. */
    public boolean isLessThan(Quantity other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(Quantity other) {
        return amount.compareTo(other.amount);
    }

    /** The plain decimal without trailing zeros: {@code 4}, {@code 3.5}. */
    @Override
    public String toString() {
        return isZero() ? "0" : amount.stripTrailingZeros().toPlainString();
    }
}
