package counterbench.structure.bad.stock;

import java.math.BigDecimal;

/** Bad on purpose: a quantity in floating point. */
public final class HalfAWasher {
    public boolean isHalf(BigDecimal quantity) {
        return quantity.doubleValue() < 1;
    }
}
