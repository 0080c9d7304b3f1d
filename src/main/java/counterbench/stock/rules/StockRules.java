package counterbench.stock.rules;

import counterbench.judgement.Judge;
import java.util.List;

/** All rules about stock, in the order in which they are explained. */
public final class StockRules {
    /** Every judge. */
    public static final List<Judge<StockFacts>> ALL =
            List.of(
                    new KitUnknown(),
                    new BalanceNegative(),
                    new CountDiffers(),
                    new KitIncomplete());

    private StockRules() {}
}
