package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** When kit accounts fall below zero. */
class BelowZeroTest {
    private final StockPaper paper = new StockPaper();

    private List<BelowZero> kitsBelowZero() {
        return BelowZero.in(paper.ledger().moves(), a -> a.kind() == Account.Kind.KIT);
    }

    @Test
    void a_kit_that_gave_what_it_held_is_not_below_zero() {
        paper.kit("K-1").event(StockEvent.Kind.SCRAPPED, "K-1", "QM-4473", "4");
        assertThat(kitsBelowZero()).isEmpty();
    }

    @Test
    void a_kit_that_gave_more_than_it_held_is_below_zero_once() {
        paper.kit("K-1").event(StockEvent.Kind.SCRAPPED, "K-1", "QM-4473", "5");
        var fact = paper.last();
        paper.event(StockEvent.Kind.SCRAPPED, "K-1", "QM-4473", "1");
        assertThat(kitsBelowZero()).hasSize(1);
        BelowZero below = kitsBelowZero().get(0);
        assertThat(below.account()).hasToString("KIT(K-1)");
        assertThat(below.part()).isEqualTo("QM-4473");
        assertThat(below.fact()).isEqualTo(fact);
        assertThat(below.balance()).hasToString("-1");
    }

    @Test
    void a_kit_from_which_a_part_went_before_it_came_was_below_zero() {
        paper.event(StockEvent.Kind.RETURNED, "K-1", "QM-4473", "1").kit("K-1");
        assertThat(kitsBelowZero()).hasSize(1);
    }

    @Test
    void only_the_balance_after_an_instant_counts() {
        paper.at("2026-03-05T14:00:00Z").event(StockEvent.Kind.RETURNED, "K-1", "QM-4473", "1");
        paper.kit("K-1");
        assertThat(kitsBelowZero()).isEmpty();
    }

    @Test
    void benches_are_not_asked_for() {
        paper.use("J-1", "QM-4473", "1", Use.Condition.NEW);
        assertThat(kitsBelowZero()).isEmpty();
    }
}
