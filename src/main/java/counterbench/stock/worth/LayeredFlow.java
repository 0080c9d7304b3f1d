package counterbench.stock.worth;

import counterbench.shared.Quantity;
import counterbench.stock.CostLayers;
import counterbench.stock.CostLayers.Layer;
import counterbench.stock.Source;
import counterbench.stock.Takers;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Costs that stay with the pieces that they were paid for. */
final class LayeredFlow implements CostFlow {
    private final CostLayers layers;
    private final boolean byLot;
    private final Takers takers = new Takers();

    /**
     * @param byLot whether pieces of the lot that is named leave before others
     */
    LayeredFlow(CostLayers layers, boolean byLot) {
        this.layers = layers;
        this.byLot = byLot;
    }

    @Override
    public void in(Source source, Quantity quantity, @Nullable BigDecimal unitCost) {
        layers.in(new Layer(source, quantity, unitCost));
    }

    @Override
    public void out(Source source, Quantity quantity, String taker) {
        layers.out(byLot ? source : Source.LOOSE, quantity, layer -> takers.give(taker, layer));
    }

    @Override
    public void back(Source source, Quantity quantity, String taker) {
        takers.back(taker, source, quantity).forEach(layers::in);
    }

    @Override
    public void endMonth() {}

    @Override
    public Worth held() {
        Worth held = new Worth(layers.missing().negate(), valueOfMissing());
        for (Layer layer : layers.layers()) {
            held = held.plus(Worth.of(layer.quantity(), layer.unitCost()));
        }
        return held;
    }

    /** What left before it came costs what comes next, which nobody knows yet. */
    private @Nullable BigDecimal valueOfMissing() {
        return layers.missing().isZero() ? BigDecimal.ZERO : null;
    }
}
