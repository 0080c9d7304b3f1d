package counterbench.stock;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.ListIterator;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What pieces of one part cost as they leave the store: those that came first leave first, or those
 * that came last. Where a lot is named, the pieces of that lot leave first. What leaves before it
 * has come costs what comes next.
 */
public final class CostLayers {
    private final List<Layer> layers = new ArrayList<>();
    private final Deque<Wanted> wanted = new ArrayDeque<>();
    private final boolean lastFirst;

    private CostLayers(boolean lastFirst) {
        this.lastFirst = lastFirst;
    }

    /** First in, first out. */
    public static CostLayers firstInFirstOut() {
        return new CostLayers(false);
    }

    /** Last in, first out. */
    public static CostLayers lastInFirstOut() {
        return new CostLayers(true);
    }

    /**
     * So many pieces at one cost.
     *
     * @param unitCost what one cost; null where nobody knows
     */
    public record Layer(Source source, Quantity quantity, @Nullable BigDecimal unitCost) {
        public Layer {
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(quantity, "quantity");
        }

        /** The same cost of fewer or more. */
        Layer of(Quantity other) {
            return new Layer(source, other, unitCost);
        }

        /** What they cost in all, exactly; null where nobody knows. */
        public @Nullable BigDecimal cost() {
            return unitCost == null ? null : unitCost.multiply(quantity.amount());
        }
    }

    private record Wanted(Quantity quantity, Consumer<Layer> to) {}

    /** Takes pieces in. */
    public void in(Layer layer) {
        Layer left = layer;
        while (left.quantity().isPositive() && !wanted.isEmpty()) {
            Wanted first = wanted.removeFirst();
            Quantity taken = first.quantity().min(left.quantity());
            first.to().accept(left.of(taken));
            left = left.of(left.quantity().minus(taken));
            if (taken.isLessThan(first.quantity())) {
                wanted.addFirst(new Wanted(first.quantity().minus(taken), first.to()));
            }
        }
        if (left.quantity().isPositive()) {
            layers.add(lastFirst ? 0 : layers.size(), left);
        }
    }

    /**
     * Gives pieces out.
     *
     * @param from the lot that is named; {@link Source#LOOSE} where none is
     * @param to is told what goes, at once or when it has come
     */
    public void out(Source from, Quantity quantity, Consumer<Layer> to) {
        Quantity left = quantity;
        if (from.kind() != Source.Kind.LOOSE) {
            left = draw(from, left, to);
        }
        left = draw(null, left, to);
        if (left.isPositive()) {
            wanted.addLast(new Wanted(left, to));
        }
    }

    private Quantity draw(@Nullable Source from, Quantity quantity, Consumer<Layer> to) {
        Quantity left = quantity;
        ListIterator<Layer> each = layers.listIterator();
        while (each.hasNext() && left.isPositive()) {
            Layer layer = each.next();
            if (from == null || from.equals(layer.source())) {
                Quantity taken = layer.quantity().min(left);
                to.accept(layer.of(taken));
                left = left.minus(taken);
                if (taken.isLessThan(layer.quantity())) {
                    each.set(layer.of(layer.quantity().minus(taken)));
                } else {
                    each.remove();
                }
            }
        }
        return left;
    }

    /** What is there, what leaves first in front. */
    public List<Layer> layers() {
        return List.copyOf(layers);
    }

    /** How many left that never came. */
    public Quantity missing() {
        return wanted.stream().map(Wanted::quantity).reduce(Quantity.ZERO, Quantity::plus);
    }

    /** Ends: what has left and never came costs nobody knows what. */
    public void end() {
        wanted.forEach(w -> w.to().accept(new Layer(Source.LOOSE, w.quantity(), null)));
        wanted.clear();
    }
}
