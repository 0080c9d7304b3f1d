package counterbench.acts;

import counterbench.shared.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is ordered and has not come. A delivery whose paper bears an order's number counts against
 * that one; every other fills the oldest order of its part that was out by then.
 */
public final class OpenOrders {
    private final List<Order> open;

    private OpenOrders(List<Order> open) {
        this.open = List.copyOf(open);
    }

    /**
     * One line of an order.
     *
     * @param quantity how much has not come yet
     */
    public record Order(
            String order,
            String part,
            Quantity quantity,
            LocalDate orderedOn,
            @Nullable LocalDate expectedOn) {
        public Order {
            Objects.requireNonNull(order, "order");
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(quantity, "quantity");
            Objects.requireNonNull(orderedOn, "orderedOn");
        }

        private Order less(Quantity came) {
            return new Order(order, part, quantity.minus(came), orderedOn, expectedOn);
        }
    }

    /**
     * Something that came.
     *
     * @param document the number on its paper
     */
    public record Delivery(
            String part, Quantity quantity, LocalDate on, @Nullable String document) {
        private Delivery less(Quantity taken) {
            return new Delivery(part, quantity.minus(taken), on, document);
        }

        private boolean fills(Order order, boolean byNumber) {
            boolean fits =
                    byNumber ? order.order().equals(document) : !on.isBefore(order.orderedOn());
            return fits && part.equals(order.part());
        }
    }

    /** Sets deliveries against orders. */
    public static OpenOrders of(Collection<Order> orders, Collection<Delivery> deliveries) {
        List<Order> open =
                new ArrayList<>(
                        orders.stream()
                                .sorted(
                                        Comparator.comparing(Order::orderedOn)
                                                .thenComparing(Order::order))
                                .toList());
        List<Delivery> rest = new ArrayList<>();
        deliveries.forEach(delivery -> rest.add(fill(open, delivery, true)));
        rest.sort(Comparator.comparing(Delivery::on));
        rest.forEach(delivery -> fill(open, delivery, false));
        open.removeIf(order -> !order.quantity().isPositive());
        return new OpenOrders(open);
    }

    private static Delivery fill(List<Order> open, Delivery delivery, boolean byNumber) {
        Delivery rest = delivery;
        for (int i = 0; i < open.size() && rest.quantity().isPositive(); i++) {
            if (rest.fills(open.get(i), byNumber)) {
                Quantity came = open.get(i).quantity().min(rest.quantity());
                open.set(i, open.get(i).less(came));
                rest = rest.less(came);
            }
        }
        return rest;
    }

    /** Orders of a part, the oldest first. */
    public List<Order> ofPart(String part) {
        return open.stream().filter(order -> order.part().equals(part)).toList();
    }

    /** How much of a part is still to come. */
    public Quantity quantityOf(String part) {
        return ofPart(part).stream().map(Order::quantity).reduce(Quantity.ZERO, Quantity::plus);
    }

    /** When the first of it is expected, if an order says so. */
    public Optional<LocalDate> expectedOn(String part) {
        return ofPart(part).stream()
                .map(Order::expectedOn)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder());
    }
}
