package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.stock.Use.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Uses that name kits not issued to their job, and uses that name none. */
class LedgerOfForeignKitsTest {
    private static final String WASHER = "QM-4473";

    private final StockPaper paper = new StockPaper();

    private List<String> lastMoves() {
        return paper.ledger().moves().stream()
                .filter(m -> m.fact().equals(paper.last()))
                .map(m -> m.from() + " > " + m.to() + ": " + m.quantity() + ", " + m.source())
                .toList();
    }

    private String washers(Account account) {
        return String.valueOf(paper.ledger().balance(account).get(WASHER));
    }

    @Test
    void a_foreign_kit_on_the_shelf_gives_the_quantity_from_its_box() {
        paper.kit("K-1").use("J-1", WASHER, "3", Condition.NEW, "K-1");
        assertThat(lastMoves())
                .containsExactly(
                        "KIT(K-1) > BENCH(J-1): 3, kit K-1",
                        "BENCH(J-1) > VEHICLE(J-1): 3, kit K-1");
    }

    @Test
    void a_foreign_kit_on_another_bench_gives_the_quantity_from_there() {
        paper.kit("K-1").issueKit("K-1", "J-2").use("J-1", WASHER, "3", Condition.NEW, "K-1");
        assertThat(lastMoves())
                .containsExactly(
                        "BENCH(J-2) > BENCH(J-1): 3, kit K-1",
                        "BENCH(J-1) > VEHICLE(J-1): 3, kit K-1");
        assertThat(washers(Account.bench("J-2"))).isEqualTo("1");
    }

    @Test
    void a_foreign_kit_gives_from_its_box_first_and_from_a_bench_then() {
        paper.kit("K-1").issueKit("K-1", "J-2");
        paper.use("J-2", WASHER, "2", Condition.PUT_BACK, "K-1");
        paper.use("J-1", WASHER, "3", Condition.SCRAPPED, "K-1");
        assertThat(lastMoves())
                .containsExactly(
                        "KIT(K-1) > BENCH(J-1): 2, kit K-1",
                        "BENCH(J-2) > BENCH(J-1): 1, kit K-1",
                        "BENCH(J-1) > SCRAP: 3, kit K-1");
    }

    @Test
    void a_foreign_kit_that_is_used_up_leaves_the_bench_below_zero() {
        paper.kit("K-1").issueKit("K-1", "J-2").use("J-2", WASHER, "4", Condition.NEW);
        paper.use("J-1", WASHER, "1", Condition.NEW, "K-1");
        assertThat(washers(Account.bench("J-1"))).isEqualTo("-1");
        assertThat(washers(Account.kit("K-1"))).isEqualTo("null");
    }

    @Test
    void an_unknown_kit_leaves_the_bench_below_zero() {
        paper.use("J-1", WASHER, "4", Condition.NEW, "K-404");
        assertThat(washers(Account.bench("J-1"))).isEqualTo("-4");
    }

    @Test
    void old_hardware_and_hardware_taken_off_fetch_nothing_from_a_foreign_kit() {
        paper.kit("K-1").use("J-1", WASHER, "1", Condition.REUSED, "K-1");
        paper.use("J-1", WASHER, "1", Condition.TAKEN_OFF, "K-1", null, Condition.NEW);
        assertThat(washers(Account.kit("K-1"))).isEqualTo("4");
        assertThat(washers(Account.bench("J-1"))).isEqualTo("null");
    }

    @Test
    void a_kit_issued_a_little_later_than_it_was_used_is_no_foreign_kit() {
        paper.kit("K-1").use("J-1", WASHER, "3", Condition.NEW, "K-1").issueKit("K-1", "J-1");
        assertThat(washers(Account.bench("J-1"))).isEqualTo("1");
        assertThat(paper.ledger().balance(Account.kit("K-1"))).isEmpty();
    }

    @Test
    void a_use_without_a_kit_comes_from_the_one_kit_that_holds_the_part_then_from_others() {
        paper.issuePart(WASHER, "1", "7C", "J-1").kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", WASHER, "5", Condition.NEW);
        assertThat(lastMoves())
                .containsExactly(
                        "BENCH(J-1) > VEHICLE(J-1): 4, kit K-1",
                        "BENCH(J-1) > VEHICLE(J-1): 1, lot 7C");
    }

    @Test
    void a_use_that_could_come_from_two_kits_takes_from_the_first_to_arrive() {
        paper.kit("K-1").kit("K-2").issueKit("K-2", "J-1").issueKit("K-1", "J-1");
        paper.use("J-1", WASHER, "5", Condition.NEW);
        assertThat(lastMoves())
                .containsExactly(
                        "BENCH(J-1) > VEHICLE(J-1): 4, kit K-2",
                        "BENCH(J-1) > VEHICLE(J-1): 1, kit K-1");
    }

    @Test
    void a_use_from_nowhere_leaves_the_bench_below_zero() {
        paper.use("J-1", WASHER, "2", Condition.NEW);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > VEHICLE(J-1): 2, loose");
        assertThat(washers(Account.bench("J-1"))).isEqualTo("-2");
    }
}
