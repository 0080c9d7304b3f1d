package counterbench.stock.worth;

import counterbench.shared.Quantity;
import counterbench.stock.Source;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Costs a month as if everything had come in before anything went out, which is how a store is
 * valued that is only looked at when the month ends.
 */
final class PeriodicFlow implements CostFlow {
    private static final String ALL_TAKERS = "";

    private final CostFlow flow;
    private Quantity out = Quantity.ZERO;

    PeriodicFlow(CostFlow flow) {
        this.flow = flow;
    }

    @Override
    public void in(Source source, Quantity quantity, @Nullable BigDecimal unitCost) {
        flow.in(source, quantity, unitCost);
    }

    @Override
    public void out(Source source, Quantity quantity, String taker) {
        out = out.plus(quantity);
    }

    @Override
    public void back(Source source, Quantity quantity, String taker) {
        out = out.minus(quantity);
    }

    @Override
    public void endMonth() {
        if (out.isPositive()) {
            flow.out(Source.LOOSE, out, ALL_TAKERS);
        } else if (out.isNegative()) {
            flow.back(Source.LOOSE, out.negate(), ALL_TAKERS);
        }
        out = Quantity.ZERO;
    }

    @Override
    public Worth held() {
        return flow.held();
    }
}
