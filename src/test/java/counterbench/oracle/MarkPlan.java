package counterbench.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;

/** One mark before it is written; faults change it. */
final class MarkPlan {

    final Pack.Step step;
    final int fastener;
    Instant at;
    BigDecimal value;
    String unit;
    BigDecimal minutes;
    String instrument = "";

    MarkPlan(Pack.Step step, int fastener, Instant at) {
        this.step = step;
        this.fastener = fastener;
        this.at = at;
        this.unit = step.unit();
    }

    MarkPlan again(Instant later) {
        MarkPlan copy = new MarkPlan(step, fastener, later);
        copy.value = value;
        copy.unit = unit;
        copy.minutes = minutes;
        copy.instrument = instrument;
        return copy;
    }

    /** A limit in the step's own unit. */
    static BigDecimal own(Pack.Step step, Amount limit) {
        BigDecimal one = Units.baseDifference(BigDecimal.ONE, step.unit());
        return Units.baseDifference(limit.number(), limit.unit())
                .divide(one, MathContext.DECIMAL128)
                .stripTrailingZeros();
    }

    /** Writes the value in another unit; it stays well inside where it was. */
    void write(String other) {
        BigDecimal base = Units.base(value, unit);
        BigDecimal one = Units.baseDifference(BigDecimal.ONE, other);
        BigDecimal zero = Units.base(BigDecimal.ZERO, other);
        value =
                base.subtract(zero)
                        .divide(one, MathContext.DECIMAL128)
                        .setScale(2, RoundingMode.HALF_UP);
        unit = other;
    }
}
