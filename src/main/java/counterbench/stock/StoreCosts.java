package counterbench.stock;

import counterbench.shared.Quantity;
import counterbench.stock.FirstInFirstOut.Layer;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
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
    private static final Comparator<Move> ORDER =
            Comparator.comparing(Move::at)
                    .thenComparing(StoreCosts::place)
                    .thenComparing(Move::fact);

    private final Function<Move, @Nullable BigDecimal> inbound;
    private final Map<String, FirstInFirstOut> stores = new TreeMap<>();
    private final Map<String, Map<String, Deque<Layer>>> jobs = new HashMap<>();

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
        moves.stream().sorted(ORDER).forEach(costs::take);
        costs.stores.values().forEach(FirstInFirstOut::end);
        return costs;
    }

    private static int place(Move move) {
        if (move.touches(Account.COUNT)) {
            return 2;
        }
        return move.to().equals(Account.STORE) ? 0 : 1;
    }

    private void take(Move move) {
        FirstInFirstOut store = stores.computeIfAbsent(move.part(), part -> new FirstInFirstOut());
        if (move.to().equals(Account.STORE)) {
            back(move).forEach(store::in);
        } else {
            store.out(move.source(), move.quantity(), layer -> out(move, layer));
        }
    }

    private void out(Move move, Layer layer) {
        if (move.to().kind() == Account.Kind.BENCH) {
            bench(move.to().name(), move.part()).addLast(layer);
        }
    }

    private Deque<Layer> bench(@Nullable String job, String part) {
        return jobs.computeIfAbsent(String.valueOf(job), j -> new TreeMap<>())
                .computeIfAbsent(part, p -> new ArrayDeque<>());
    }

    private List<Layer> back(Move move) {
        boolean loose =
                move.from().kind() == Account.Kind.BENCH && move.source().kind() != Source.Kind.KIT;
        if (!loose) {
            return List.of(new Layer(move.source(), move.quantity(), inbound.apply(move)));
        }
        Deque<Layer> held = bench(move.from().name(), move.part());
        List<Layer> back = new ArrayList<>();
        Quantity left = move.quantity();
        while (left.isPositive() && !held.isEmpty()) {
            Layer last = held.removeLast();
            Quantity taken = last.quantity().min(left);
            back.add(last.of(taken));
            left = left.minus(taken);
            if (taken.isLessThan(last.quantity())) {
                held.addLast(last.of(last.quantity().minus(taken)));
            }
        }
        if (left.isPositive()) {
            back.add(new Layer(move.source(), left, null));
        }
        return back;
    }

    /** What a job has got of loose parts and not put back, by part. */
    public Map<String, List<Layer>> ofJob(String job) {
        Map<String, List<Layer>> parts = new TreeMap<>();
        jobs.getOrDefault(job, Map.of())
                .forEach((part, layers) -> parts.put(part, List.copyOf(layers)));
        return parts;
    }

    /** What lies in the store of a part, the first in first. */
    public List<Layer> inStore(String part) {
        FirstInFirstOut store = stores.get(part);
        return store == null ? List.of() : store.layers();
    }
}
