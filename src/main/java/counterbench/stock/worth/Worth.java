package counterbench.stock.worth;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one part and what they are worth.
 *
 * @param value null where nobody knows what some of them cost
 */
public record Worth(Quantity quantity, @Nullable BigDecimal value) {
    /** Nothing. */
    public static final Worth NONE = new Worth(Quantity.ZERO, BigDecimal.ZERO);

    public Worth {
        Objects.requireNonNull(quantity, "quantity");
    }

    /**
     * So many pieces at one cost.
     *
     * @param unitCost null where nobody knows
     */
    public static Worth of(Quantity quantity, @Nullable BigDecimal unitCost) {
        return new Worth(quantity, unitCost == null ? null : unitCost.multiply(quantity.amount()));
    }

    /** Both together. */
    public Worth plus(Worth other) {
        return new Worth(
                quantity.plus(other.quantity),
                value == null || other.value == null ? null : value.add(other.value));
    }

    /** What is left without the other. */
    public Worth minus(Worth other) {
        return new Worth(
                quantity.minus(other.quantity),
                value == null || other.value == null ? null : value.subtract(other.value));
    }

    /** The same, its value rounded half-even to a whole unit of money. */
    Worth inWholeUnits() {
        return new Worth(
                quantity, value == null ? null : value.setScale(0, RoundingMode.HALF_EVEN));
    }
}
