package counterbench.acts;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Quantity;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OpenOrdersTest {
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);

    private static OpenOrders.Order order(String name, int quantity, int day) {
        LocalDate on = MARCH.withDayOfMonth(day);
        return new OpenOrders.Order(name, "P", Quantity.of(quantity), on, on.plusDays(10));
    }

    private static OpenOrders.Delivery delivery(int quantity, int day, @Nullable String document) {
        return new OpenOrders.Delivery(
                "P", Quantity.of(quantity), MARCH.withDayOfMonth(day), document);
    }

    @Test
    void deliveries_fill_the_oldest_order_first() {
        OpenOrders open =
                OpenOrders.of(
                        List.of(order("B", 4, 9), order("A", 8, 2)),
                        List.of(delivery(6, 12, "DN-1"), delivery(3, 13, null)));

        assertThat(open.ofPart("P")).containsExactly(order("B", 3, 9));
        assertThat(open.quantityOf("P")).isEqualTo(Quantity.of(3));
        assertThat(open.expectedOn("P")).contains(MARCH.withDayOfMonth(19));
    }

    @Test
    void a_delivery_that_names_its_order_counts_against_that_one() {
        OpenOrders open =
                OpenOrders.of(
                        List.of(order("A", 8, 2), order("B", 4, 9)), List.of(delivery(4, 12, "B")));

        assertThat(open.ofPart("P")).containsExactly(order("A", 8, 2));
    }

    @Test
    void what_came_before_an_order_does_not_fill_it() {
        OpenOrders open = OpenOrders.of(List.of(order("A", 8, 2)), List.of(delivery(8, 1, "DN-1")));

        assertThat(open.quantityOf("P")).isEqualTo(Quantity.of(8));
        assertThat(open.quantityOf("Q")).isEqualTo(Quantity.ZERO);
    }
}
