package counterbench.stock;

import counterbench.shared.Quantity;
import counterbench.stock.CostLayers.Layer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What jobs got of one part from the store and hold, so that what they put back costs the same. */
public final class Takers {
    private final Map<String, Deque<Layer>> layers = new HashMap<>();

    /** Gives pieces to a taker. */
    public void give(@Nullable String taker, Layer layer) {
        layers.computeIfAbsent(String.valueOf(taker), t -> new ArrayDeque<>()).addLast(layer);
    }

    /** Takes pieces back from a taker, those that it got last; what it never got has no cost. */
    public List<Layer> back(@Nullable String taker, Source source, Quantity quantity) {
        Deque<Layer> held = layers.getOrDefault(String.valueOf(taker), new ArrayDeque<>());
        List<Layer> back = new ArrayList<>();
        Quantity left = quantity;
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
            back.add(new Layer(source, left, null));
        }
        return back;
    }

    /** What a taker holds, the first in first. */
    public List<Layer> of(String taker) {
        return List.copyOf(layers.getOrDefault(taker, new ArrayDeque<>()));
    }
}
