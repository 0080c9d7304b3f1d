package counterbench.stock.worth;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Quantity;
import counterbench.stock.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The worked example is that of OpenStax, Principles of Accounting, Volume 1, chapter 10, sections
 * 10.2 and 10.3 (Rice University): 150 units at $21 to begin with, 225 bought at $27, 210 at $33;
 * 120 sold, then 180; goods available for $16,155. Its averages are rounded as it prints them, the
 * unit cost to the cent and values to the dollar; the exact ones are computed from the same data.
 */
class CostMethodTest {
    private static final BigDecimal AVAILABLE = new BigDecimal("16155");
    private static final Source FIRST = Source.lot("FIRST");
    private static final Source SECOND = Source.lot("SECOND");
    private static final Source THIRD = Source.lot("THIRD");

    private static void in(CostFlow flow, Source lot, long units, String cost) {
        flow.in(lot, Quantity.of(units), new BigDecimal(cost));
    }

    private static Worth july(CostMethod method, Rounding rounding) {
        CostFlow flow = method.begin(rounding);
        in(flow, FIRST, 150, "21");
        flow.out(FIRST, Quantity.of(120), "first sale");
        in(flow, SECOND, 225, "27");
        flow.out(FIRST, Quantity.of(20), "second sale");
        flow.out(SECOND, Quantity.of(160), "second sale");
        in(flow, THIRD, 210, "33");
        flow.endMonth();
        return flow.held();
    }

    private static BigDecimal value(Worth worth) {
        return Objects.requireNonNull(worth.value());
    }

    @ParameterizedTest
    @CsvSource({
        "LOTS, 7260, 8895",
        "FIFO, 7200, 8955",
        "LIFO_BY_MONTH, 9360, 6795",
        "LIFO, 7380, 8775",
        "AVERAGE, 8283, 7872",
        "MOVING_AVERAGE, 7253, 8902"
    })
    void goods_sold_and_left_cost_what_the_textbook_prints(
            CostMethod method, BigDecimal sold, BigDecimal left) {
        Worth held = july(method, Rounding.WHOLE);

        assertThat(held.quantity()).isEqualTo(Quantity.of(285));
        assertThat(value(held)).isEqualByComparingTo(left);
        assertThat(AVAILABLE.subtract(value(held))).isEqualByComparingTo(sold);
    }

    @ParameterizedTest
    @CsvSource({
        "LOTS, 7260.00, 8895.00",
        "FIFO, 7200.00, 8955.00",
        "LIFO_BY_MONTH, 9360.00, 6795.00",
        "LIFO, 7380.00, 8775.00",
        "AVERAGE, 8284.62, 7870.38",
        "MOVING_AVERAGE, 7252.94, 8902.06"
    })
    void without_rounding_they_come_to_the_exact_figures(
            CostMethod method, BigDecimal sold, BigDecimal left) {
        BigDecimal held = value(july(method, Rounding.EXACT));

        assertThat(held.setScale(2, RoundingMode.HALF_EVEN)).isEqualTo(left);
        assertThat(AVAILABLE.subtract(held).setScale(2, RoundingMode.HALF_EVEN)).isEqualTo(sold);
    }

    /** Its unit costs: 27.62 for the month; 31.24 at the end of July, 26.29 after the 10th. */
    @Test
    void average_unit_costs_are_those_of_the_textbook() {
        CostFlow moving = CostMethod.MOVING_AVERAGE.begin(Rounding.WHOLE);
        in(moving, FIRST, 150, "21");
        moving.out(Source.LOOSE, Quantity.of(120), "first sale");
        in(moving, SECOND, 225, "27");

        assertThat(unit(moving.held())).isEqualByComparingTo("26.29");
        assertThat(unit(july(CostMethod.MOVING_AVERAGE, Rounding.WHOLE)))
                .isEqualByComparingTo("31.24");
        assertThat(unit(july(CostMethod.AVERAGE, Rounding.WHOLE))).isEqualByComparingTo("27.62");
    }

    private static BigDecimal unit(Worth worth) {
        return Rounding.WHOLE.unitCost(value(worth), worth.quantity().amount());
    }

    @ParameterizedTest
    @EnumSource(CostMethod.class)
    void what_is_put_back_costs_what_it_did_when_it_went(CostMethod method) {
        CostFlow flow = method.begin(Rounding.EXACT);
        in(flow, FIRST, 4, "10");
        flow.out(Source.LOOSE, Quantity.of(3), "job");
        flow.endMonth();
        in(flow, SECOND, 1, "30");
        flow.back(Source.LOOSE, Quantity.of(2), "job");
        flow.endMonth();

        assertThat(flow.held().quantity()).isEqualTo(Quantity.of(4));
        assertThat(value(flow.held())).isEqualByComparingTo("60");
    }

    @ParameterizedTest
    @EnumSource(CostMethod.class)
    void an_empty_store_is_worth_nothing(CostMethod method) {
        CostFlow flow = method.begin(Rounding.EXACT);
        in(flow, FIRST, 3, "10");
        in(flow, SECOND, 4, "11");
        flow.out(Source.LOOSE, Quantity.of(5), "job");
        flow.out(Source.LOOSE, Quantity.of(2), "job");
        flow.endMonth();

        assertThat(flow.held().quantity()).isEqualTo(Quantity.ZERO);
        assertThat(value(flow.held())).isEqualByComparingTo("0");
    }

    @ParameterizedTest
    @EnumSource(CostMethod.class)
    void nobody_knows_what_pieces_are_worth_whose_paper_says_no_cost(CostMethod method) {
        CostFlow flow = method.begin(Rounding.EXACT);
        in(flow, FIRST, 3, "10");
        flow.in(SECOND, Quantity.of(2), null);
        flow.endMonth();

        assertThat(flow.held()).isEqualTo(new Worth(Quantity.of(5), null));

        flow.out(Source.LOOSE, Quantity.of(5), "job");
        in(flow, THIRD, 2, "7");
        flow.endMonth();

        assertThat(flow.held().quantity()).isEqualTo(Quantity.of(2));
    }

    @ParameterizedTest
    @EnumSource(names = {"LOTS", "FIFO", "LIFO", "MOVING_AVERAGE"})
    void a_store_that_was_emptied_is_known_again(CostMethod method) {
        CostFlow flow = method.begin(Rounding.EXACT);
        flow.in(FIRST, Quantity.of(2), null);
        flow.out(Source.LOOSE, Quantity.of(2), "job");
        in(flow, SECOND, 2, "7");

        assertThat(value(flow.held())).isEqualByComparingTo("14");
    }

    @Test
    void what_left_before_it_came_is_worth_nobody_knows_what_until_it_comes() {
        CostFlow flow = CostMethod.LOTS.begin(Rounding.EXACT);
        flow.out(Source.LOOSE, Quantity.of(2), "job");

        assertThat(flow.held()).isEqualTo(new Worth(Quantity.of(-2), null));

        in(flow, FIRST, 5, "4");

        assertThat(value(flow.held())).isEqualByComparingTo("12");
    }

    @Test
    void of_the_averages_the_first_that_leaves_too_early_has_no_cost_and_a_later_one_has() {
        CostFlow flow = CostMethod.MOVING_AVERAGE.begin(Rounding.EXACT);
        in(flow, FIRST, 2, "6");
        flow.out(Source.LOOSE, Quantity.of(2), "job");
        flow.out(Source.LOOSE, Quantity.of(1), "job");

        assertThat(value(flow.held())).isEqualByComparingTo("-6");
    }
}
