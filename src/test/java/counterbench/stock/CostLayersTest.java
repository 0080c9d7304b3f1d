package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Quantity;
import counterbench.stock.CostLayers.Layer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The worked example is that of OpenStax, Principles of Accounting, Volume 1, chapter 10 (Rice
 * University): 150 units at $21 to begin with, 225 bought at $27, 210 at $33; 120 sold at $36, 180
 * at $39.
 */
class CostLayersTest {
    private final CostLayers store = CostLayers.firstInFirstOut();
    private final List<Layer> sold = new ArrayList<>();

    private void in(long units, String cost) {
        store.in(new Layer(Source.LOOSE, Quantity.of(units), new BigDecimal(cost)));
    }

    private void out(long units) {
        store.out(Source.LOOSE, Quantity.of(units), sold::add);
    }

    private static BigDecimal cost(List<Layer> layers) {
        return layers.stream()
                .map(Layer::cost)
                .map(Objects::requireNonNull)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void perpetual_first_in_first_out_is_that_of_the_textbook() {
        in(150, "21");
        out(120);
        in(225, "27");
        out(180);
        in(210, "33");

        assertThat(cost(sold)).isEqualByComparingTo("7200");
        assertThat(cost(store.layers())).isEqualByComparingTo("8955");
        assertThat(store.layers())
                .containsExactly(
                        new Layer(Source.LOOSE, Quantity.of(75), new BigDecimal("27")),
                        new Layer(Source.LOOSE, Quantity.of(210), new BigDecimal("33")));
        assertThat(new BigDecimal("11340").subtract(cost(sold))).isEqualByComparingTo("4140");
    }

    @Test
    void periodic_comes_to_the_same_and_all_of_it_to_the_goods_available() {
        in(150, "21");
        in(225, "27");
        in(210, "33");
        out(300);

        assertThat(cost(sold)).isEqualByComparingTo("7200");
        assertThat(cost(sold).add(cost(store.layers()))).isEqualByComparingTo("16155");
    }

    /**
     * Its specific identification: of the second sale, 20 are of the first lot, 160 of the next.
     */
    @Test
    void lots_that_are_named_cost_what_the_textbook_identifies() {
        Source first = Source.lot("FIRST");
        Source second = Source.lot("SECOND");
        store.in(new Layer(first, Quantity.of(150), new BigDecimal("21")));
        store.out(first, Quantity.of(120), sold::add);
        store.in(new Layer(second, Quantity.of(225), new BigDecimal("27")));
        store.out(first, Quantity.of(20), sold::add);
        store.out(second, Quantity.of(160), sold::add);
        in(210, "33");

        assertThat(cost(sold)).isEqualByComparingTo("7260");
        assertThat(cost(store.layers())).isEqualByComparingTo("8895");
        assertThat(store.layers())
                .extracting(layer -> layer.quantity().amount().intValueExact())
                .containsExactly(10, 65, 210);
        assertThat(new BigDecimal("11340").subtract(cost(sold))).isEqualByComparingTo("4080");
    }

    /** The text of its section 10.1: 350 + 140 − 126 = 364 for 52 units at $7. */
    @Test
    void the_cost_of_the_first_section_is_that_of_the_textbook() {
        in(50, "7");
        in(20, "7");
        out(52);

        assertThat(cost(sold)).isEqualByComparingTo("364");
        assertThat(cost(store.layers())).isEqualByComparingTo("126");
    }

    @Test
    void what_leaves_before_it_has_come_costs_what_comes_next() {
        out(3);
        assertThat(sold).isEmpty();

        in(2, "5");
        in(4, "6");

        assertThat(cost(sold)).isEqualByComparingTo("16");
        assertThat(store.layers())
                .containsExactly(new Layer(Source.LOOSE, Quantity.of(3), new BigDecimal("6")));
    }

    @Test
    void what_never_came_costs_nobody_knows_what() {
        out(1);

        store.end();

        assertThat(sold).containsExactly(new Layer(Source.LOOSE, Quantity.ONE, null));
        assertThat(sold.get(0).cost()).isNull();
    }

    @Test
    void a_lot_that_is_named_leaves_first_and_then_the_oldest() {
        store.in(new Layer(Source.lot("A"), Quantity.of(2), new BigDecimal("1")));
        store.in(new Layer(Source.lot("B"), Quantity.of(2), new BigDecimal("10")));

        store.out(Source.lot("B"), Quantity.of(3), sold::add);

        assertThat(cost(sold)).isEqualByComparingTo("21");
        assertThat(store.layers())
                .containsExactly(new Layer(Source.lot("A"), Quantity.ONE, new BigDecimal("1")));
    }
}
