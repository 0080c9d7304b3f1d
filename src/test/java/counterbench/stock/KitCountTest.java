package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.stock.StockEvent.Kind;
import counterbench.stock.Use.Condition;
import org.junit.jupiter.api.Test;

/** Kits that a count finds or does not find. */
class KitCountTest {
    private static final String WHOLE = "{QM-4471=1, QM-4472=1, QM-4473=4, QM-4475=3.5, QM-4476=5}";

    private final StockPaper paper = new StockPaper();

    private String holds(Account account) {
        return paper.ledger().balance(account).toString();
    }

    @Test
    void a_kit_that_is_where_the_book_says_makes_no_difference() {
        paper.kit("K-1").countKit("K-1", 1).issueKit("K-1", "J-1").countKit("K-1", 0);
        assertThat(paper.ledger().differences()).isEmpty();
        assertThat(holds(Account.COUNT)).isEqualTo("{}");
    }

    @Test
    void a_kit_that_is_not_found_moves_all_that_it_holds() {
        paper.kit("K-1").countKit("K-1", 0);
        assertThat(holds(Account.COUNT)).isEqualTo(WHOLE);
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{}");
        CountDifference difference = paper.ledger().differences().get(0);
        assertThat(difference.account()).hasToString("KIT(K-1)");
        assertThat(difference.part()).isNull();
        assertThat(difference.counted()).hasToString("0");
        assertThat(difference.book()).hasToString("1");
    }

    @Test
    void a_kit_found_again_comes_back_with_what_it_held() {
        paper.kit("K-1").event(Kind.SCRAPPED, "K-1", "QM-4473", "1");
        paper.countKit("K-1", 0).countKit("K-1", 1);
        assertThat(holds(Account.COUNT)).isEqualTo("{}");
        assertThat(holds(Account.kit("K-1"))).contains("QM-4473=3");
        assertThat(paper.ledger().differences()).hasSize(2);
    }

    @Test
    void a_kit_found_that_was_issued_comes_back_with_what_was_issued() {
        paper.kit("K-1").issueKit("K-1", "J-1").countKit("K-1", 1);
        assertThat(holds(Account.kit("K-1"))).isEqualTo(WHOLE);
        assertThat(holds(Account.bench("J-1"))).isEqualTo(WHOLE);
    }

    @Test
    void a_kit_that_was_opened_still_stands_on_the_shelf() {
        paper.kit("K-1").use("J-1", "QM-4473", "4", Condition.NEW, "K-1").countKit("K-1", 1);
        assertThat(paper.ledger().differences()).isEmpty();
    }

    @Test
    void a_kit_whose_contents_nobody_knows_is_counted_all_the_same() {
        paper.kitThatNoPackKnows("K-1").countKit("K-1", 1);
        assertThat(paper.ledger().differences()).isEmpty();
        paper.countKit("K-1", 0);
        assertThat(paper.ledger().differences()).hasSize(1);
    }

    @Test
    void a_kit_put_back_is_expected_on_the_shelf() {
        paper.kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", "QM-4473", "4", Condition.PUT_BACK, "K-1").countKit("K-1", 1);
        assertThat(paper.ledger().differences()).isEmpty();
    }

    @Test
    void a_kit_that_never_came_and_is_found_brings_nothing() {
        paper.countKit("K-404", 1);
        assertThat(paper.ledger().differences()).hasSize(1);
        assertThat(paper.ledger().moves()).isEmpty();
    }

    @Test
    void a_count_comes_after_everything_else_of_its_instant() {
        paper.at("2026-03-05T14:00:00Z").countKit("K-1", 1).kit("K-1");
        assertThat(paper.ledger().differences()).isEmpty();
    }
}
