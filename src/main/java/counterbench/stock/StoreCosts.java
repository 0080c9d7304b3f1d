package counterbench.stock;

import counterbench.stock.CostLayers.Layer;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What the loose parts on jobs cost: what their receipts cost, first in, first out. Of what a job
 * puts back, the pieces that it got last go back, at what they cost.
 */
public final class StoreCosts {
    private final Function<Move, @Nullable BigDecimal> inbound;
    private final Map<String, CostLayers> stores = new TreeMap<>();
    private final Map<String, Takers> takers = new TreeMap<>();

    private StoreCosts(Function<Move, @Nullable BigDecimal> inbound) {
        this.inbound = inbound;
    }

    /**
     * Works it out.
     *
     * @param moves all that touch the store of the parts that matter, those of counts among them
     * @param inbound what one piece costs that comes into the store from elsewhere than a job's
     *     loose parts; null where nobody knows
     */
    public static StoreCosts of(
            Collection<Move> moves, Function<Move, @Nullable BigDecimal> inbound) {
        StoreCosts costs = new StoreCosts(inbound);
        moves.stream().sorted(StoreMoves.ORDER).forEach(costs::take);
        costs.stores.values().forEach(CostLayers::end);
        return costs;
    }

    private void take(Move move) {
        CostLayers store =
                stores.computeIfAbsent(move.part(), part -> CostLayers.firstInFirstOut());
        if (StoreMoves.isPutBack(move)) {
            jobs(move.part())
                    .back(move.from().name(), move.source(), move.quantity())
                    .forEach(store::in);
        } else if (move.to().equals(Account.STORE)) {
            store.in(new Layer(move.source(), move.quantity(), inbound.apply(move)));
        } else {
            store.out(move.source(), move.quantity(), layer -> out(move, layer));
        }
    }

    private void out(Move move, Layer layer) {
        if (move.to().kind() == Account.Kind.BENCH) {
            jobs(move.part()).give(move.to().name(), layer);
        }
    }

    private Takers jobs(String part) {
        return takers.computeIfAbsent(part, p -> new Takers());
    }

    /** What a job has got of loose parts and not put back, by part. */
    public Map<String, List<Layer>> ofJob(String job) {
        Map<String, List<Layer>> parts = new TreeMap<>();
        takers.forEach((part, jobs) -> parts.put(part, jobs.of(job)));
        return parts;
    }

    /** What lies in the store of a part, the first in first. */
    public List<Layer> inStore(String part) {
        CostLayers store = stores.get(part);
        return store == null ? List.of() : store.layers();
    }
}
