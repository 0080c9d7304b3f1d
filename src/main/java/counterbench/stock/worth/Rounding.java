package counterbench.stock.worth;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How averages and the values that follow from them are rounded. Rounding is half-even; whatever it
 * takes from what stays in the store, it gives to what went out.
 */
public enum Rounding {
    /** Not at all, as far as a decimal of 34 digits goes. */
    EXACT,
    /** The unit cost to the cent and the value to a whole unit of money, as handbooks print it. */
    WHOLE;

    /** The cost of one piece. */
    BigDecimal unitCost(BigDecimal value, BigDecimal quantity) {
        return this == EXACT
                ? value.divide(quantity, MathContext.DECIMAL128)
                : value.divide(quantity, 2, RoundingMode.HALF_EVEN);
    }

    /** What so many pieces are worth. */
    BigDecimal value(BigDecimal unitCost, BigDecimal quantity) {
        BigDecimal value = unitCost.multiply(quantity);
        return this == EXACT ? value : value.setScale(0, RoundingMode.HALF_EVEN);
    }
}
