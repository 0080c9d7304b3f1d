package counterbench.stock.worth;

import counterbench.shared.Quantity;
import counterbench.stock.CostLayers.Layer;
import counterbench.stock.Source;
import counterbench.stock.Takers;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Every piece in the store is worth the same: what all of them cost, shared out anew whenever some
 * come in. What leaves before it has come costs what the last one did.
 */
final class MovingAverageFlow implements CostFlow {
    private final Rounding rounding;
    private final Takers takers = new Takers();
    private Worth held = Worth.NONE;
    private @Nullable BigDecimal lastUnitCost;

    MovingAverageFlow(Rounding rounding) {
        this.rounding = rounding;
    }

    @Override
    public void in(Source source, Quantity quantity, @Nullable BigDecimal unitCost) {
        hold(held.plus(Worth.of(quantity, unitCost)));
    }

    @Override
    public void out(Source source, Quantity quantity, String taker) {
        BigDecimal unitCost = unitCost();
        takers.give(taker, new Layer(source, quantity, unitCost));
        lastUnitCost = unitCost;
        Quantity left = held.quantity().minus(quantity);
        hold(new Worth(left, unitCost == null ? null : rounding.value(unitCost, left.amount())));
    }

    private @Nullable BigDecimal unitCost() {
        if (!held.quantity().isPositive()) {
            return lastUnitCost;
        }
        BigDecimal value = held.value();
        return value == null ? null : rounding.unitCost(value, held.quantity().amount());
    }

    @Override
    public void back(Source source, Quantity quantity, String taker) {
        for (Layer layer : takers.back(taker, source, quantity)) {
            in(source, layer.quantity(), layer.unitCost());
        }
    }

    /** An empty store is worth nothing, whatever it came to before. */
    private void hold(Worth worth) {
        held = worth.quantity().isZero() ? Worth.NONE : worth;
    }

    @Override
    public void endMonth() {}

    @Override
    public Worth held() {
        return held;
    }
}
