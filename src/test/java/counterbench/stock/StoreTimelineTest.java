package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Quantity;
import counterbench.stock.StockEvent.Kind;
import counterbench.stock.Use.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loose stock of one part, counted now and then. */
class StoreTimelineTest {
    private static final String WASHER = "QM-4473";

    private final StockPaper paper = new StockPaper();

    private StoreTimeline timeline() {
        List<Move> moves =
                paper.ledger().moves().stream()
                        .filter(m -> m.touches(Account.STORE) && m.part().equals(WASHER))
                        .toList();
        return StoreTimeline.of(WASHER, moves, paper.counts);
    }

    @Test
    void a_count_that_agrees_moves_nothing() {
        paper.receipt(WASHER, "40", "7C").issuePart(WASHER, "4", "7C", "J-1");
        paper.countPart(WASHER, "36");
        assertThat(timeline().differences()).isEmpty();
        assertThat(timeline().countMoves()).isEmpty();
        assertThat(timeline().balance()).hasToString("36");
    }

    @Test
    void a_count_stores_what_was_counted() {
        paper.receipt(WASHER, "40", "7C").countPart(WASHER, "43");
        paper.issuePart(WASHER, "3", null, "J-1").countPart(WASHER, "38");
        assertThat(timeline().differences())
                .extracting(CountDifference::difference)
                .containsExactly(Quantity.of(3), Quantity.of(-2));
        assertThat(timeline().balance()).hasToString("38");
        assertThat(timeline().countMoves())
                .extracting(m -> m.from() + " > " + m.to() + " " + m.quantity())
                .containsExactly("COUNT > STORE 3", "STORE > COUNT 2");
    }

    @Test
    void late_paper_before_a_count_changes_the_difference_and_not_the_truth() {
        paper.receipt(WASHER, "40", "7C").countPart(WASHER, "43");
        paper.at("2026-03-02T08:30:00Z").receipt(WASHER, "3", "7D");
        assertThat(timeline().differences()).isEmpty();
        assertThat(timeline().balance()).hasToString("43");
    }

    @Test
    void what_is_put_back_raises_the_store() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "1", Condition.PUT_BACK);
        assertThat(timeline().balance()).hasToString("1");
    }

    @Test
    void the_store_is_below_zero_from_the_first_instant_that_leaves_it_so() {
        paper.receipt(WASHER, "1", null).issuePart(WASHER, "3", null, "J-1");
        var fact = paper.last();
        paper.issuePart(WASHER, "3", null, "J-2");
        BelowZero below = timeline().belowZero().orElseThrow();
        assertThat(below.fact()).isEqualTo(fact);
        assertThat(below.balance()).hasToString("-2");
        assertThat(below.account()).hasToString("STORE");
    }

    @Test
    void sources_are_summed_before_the_store_is_below_zero() {
        paper.receipt(WASHER, "3", "7C").issuePart(WASHER, "3", null, "J-1");
        assertThat(timeline().belowZero()).isEmpty();
    }

    @Test
    void a_receipt_of_the_same_instant_covers_the_issue() {
        paper.at("2026-03-05T14:00:00Z").issuePart(WASHER, "3", null, "J-1");
        paper.receipt(WASHER, "3", null);
        assertThat(timeline().belowZero()).isEmpty();
    }

    @Test
    void a_count_of_the_same_instant_covers_the_issue() {
        paper.at("2026-03-05T14:00:00Z").issuePart(WASHER, "3", null, "J-1");
        paper.countPart(WASHER, "0");
        assertThat(timeline().belowZero()).isEmpty();
        assertThat(timeline().differences())
                .extracting(CountDifference::difference)
                .containsExactly(Quantity.of(3));
    }

    @Test
    void scrapped_sent_and_returned_lower_the_store() {
        paper.receipt(WASHER, "9", null).event(Kind.SCRAPPED, null, WASHER, "1");
        paper.event(Kind.RETURNED, null, WASHER, "2").event(Kind.SENT, null, WASHER, "3");
        assertThat(timeline().balance()).hasToString("3");
    }

    @Test
    void a_move_of_another_part_is_refused() {
        paper.receipt("QM-4472", "9", null);
        List<Move> moves = paper.ledger().moves();
        assertThatThrownBy(() -> StoreTimeline.of(WASHER, moves, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("QM-4472");
    }
}
