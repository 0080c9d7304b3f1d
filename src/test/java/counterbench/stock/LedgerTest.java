package counterbench.stock;

import static counterbench.stock.StockEvent.Kind.ARRIVED;
import static counterbench.stock.StockEvent.Kind.RETURNED;
import static counterbench.stock.StockEvent.Kind.SCRAPPED;
import static counterbench.stock.StockEvent.Kind.SENT;
import static counterbench.stock.StockEvent.Kind.SHORT;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.stock.Use.Condition;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each line of the table of moves, by hand. */
class LedgerTest {
    private static final String BOLT = "QM-4472";
    private static final String WASHER = "QM-4473";
    private static final String SEALANT = "QM-4475";
    private static final String PLUG = "QM-4476";

    private final StockPaper paper = new StockPaper();

    private List<String> lastMoves() {
        return paper.ledger().moves().stream()
                .filter(m -> m.fact().equals(paper.last()))
                .map(LedgerTest::inWords)
                .toList();
    }

    private static String inWords(Move m) {
        return String.format(
                "%s > %s: %s %s, %s", m.from(), m.to(), m.quantity(), m.part(), m.source());
    }

    private String holds(Account account) {
        return paper.ledger().balance(account).toString();
    }

    private static final String WHOLE = "{QM-4471=1, QM-4472=1, QM-4473=4, QM-4475=3.5, QM-4476=5}";

    @Test
    void a_kit_is_received_with_its_contents_less_what_was_missing() {
        paper.kit("K-1", WASHER + ":1", BOLT + ":1");
        assertThat(lastMoves())
                .containsExactly(
                        "SUPPLIER > KIT(K-1): 1 QM-4471, kit K-1",
                        "SUPPLIER > KIT(K-1): 3 QM-4473, kit K-1",
                        "SUPPLIER > KIT(K-1): 3.5 QM-4475, kit K-1",
                        "SUPPLIER > KIT(K-1): 5 QM-4476, kit K-1");
    }

    @Test
    void a_kit_lacks_no_more_of_a_part_than_it_should_hold() {
        paper.kit("K-1", WASHER + ":7");
        assertThat(holds(Account.kit("K-1"))).doesNotContain(WASHER);
    }

    @Test
    void a_kit_whose_part_no_pack_knows_holds_nothing() {
        paper.kitThatNoPackKnows("K-1").issueKit("K-1", "J-1");
        assertThat(paper.ledger().moves()).isEmpty();
    }

    @Test
    void loose_parts_are_received_into_the_store_with_their_lot() {
        paper.receipt(WASHER, "40", "7C");
        assertThat(lastMoves()).containsExactly("SUPPLIER > STORE: 40 QM-4473, lot 7C");
    }

    @Test
    void a_kit_is_issued_with_all_that_it_still_holds() {
        paper.kit("K-1").event(SCRAPPED, "K-1", WASHER, "1").issueKit("K-1", "J-1");
        assertThat(holds(Account.bench("J-1")))
                .isEqualTo("{QM-4471=1, QM-4472=1, QM-4473=3, QM-4475=3.5, QM-4476=5}");
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{}");
    }

    @Test
    void a_kit_that_owes_a_part_keeps_owing_it_when_it_is_issued() {
        paper.kit("K-1").event(SCRAPPED, "K-1", WASHER, "5").issueKit("K-1", "J-1");
        assertThat(holds(Account.bench("J-1"))).doesNotContain(WASHER);
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{QM-4473=-1}");
    }

    @Test
    void a_kit_issued_before_it_was_received_moves_nothing() {
        paper.issueKit("K-1", "J-1").kit("K-1");
        assertThat(holds(Account.kit("K-1"))).isEqualTo(WHOLE);
        assertThat(holds(Account.bench("J-1"))).isEqualTo("{}");
    }

    @Test
    void receipts_come_before_issues_and_issues_before_uses_of_one_instant() {
        paper.at("2026-03-05T14:00:00Z")
                .use("J-1", WASHER, "1", Condition.NEW)
                .issueKit("K-1", "J-1")
                .kit("K-1");
        assertThat(holds(Account.bench("J-1"))).contains(WASHER + "=3");
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{}");
    }

    @Test
    void a_loose_part_is_issued_from_the_store() {
        paper.issuePart(WASHER, "2", "7C", "J-1");
        assertThat(lastMoves()).containsExactly("STORE > BENCH(J-1): 2 QM-4473, lot 7C");
    }

    @Test
    void what_is_fitted_new_goes_from_the_bench_to_the_vehicle() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "3", Condition.NEW, "K-1");
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > VEHICLE(J-1): 3 QM-4473, kit K-1");
    }

    @Test
    void what_is_taken_off_again_is_scrapped_if_it_was_new() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", BOLT, "1", Condition.NEW);
        paper.use("J-1", BOLT, "1", Condition.TAKEN_OFF, null, null, Condition.NEW);
        assertThat(lastMoves()).containsExactly("VEHICLE(J-1) > SCRAP: 1 QM-4472, kit K-1");
    }

    @Test
    void what_is_taken_off_again_moves_nothing_if_it_was_old() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", BOLT, "1", Condition.REUSED);
        paper.use("J-1", BOLT, "1", Condition.TAKEN_OFF, null, null, Condition.REUSED);
        assertThat(lastMoves()).isEmpty();
    }

    @Test
    void refitting_an_old_part_moves_nothing_and_the_new_one_stays_on_the_bench() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", BOLT, "1", Condition.REUSED);
        assertThat(lastMoves()).isEmpty();
        assertThat(holds(Account.bench("J-1"))).contains(BOLT + "=1");
    }

    @Test
    void a_plug_goes_on_its_core() {
        paper.kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", PLUG, "5", Condition.ON_CORE, null, "C-9", null);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > CORE(C-9): 5 QM-4476, kit K-1");
    }

    @Test
    void a_plug_on_a_core_that_nobody_named_goes_on_an_unknown_core() {
        paper.use("J-1", PLUG, "1", Condition.ON_CORE);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > CORE(?): 1 QM-4476, loose");
    }

    @Test
    void what_is_put_back_goes_into_the_store_with_its_source() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "1", Condition.PUT_BACK);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > STORE: 1 QM-4473, kit K-1");
    }

    @Test
    void what_is_put_back_goes_into_the_kit_if_it_is_named() {
        paper.kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", WASHER, "4", Condition.PUT_BACK, "K-1");
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > KIT(K-1): 4 QM-4473, kit K-1");
    }

    @Test
    void a_kit_put_back_and_issued_again_takes_along_what_was_put_back() {
        paper.kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", WASHER, "4", Condition.PUT_BACK, "K-1").issueKit("K-1", "J-2");
        assertThat(holds(Account.bench("J-2"))).isEqualTo("{QM-4473=4}");
    }

    @Test
    void what_is_damaged_goes_from_the_bench_to_scrap() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "1", Condition.SCRAPPED);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > SCRAP: 1 QM-4473, kit K-1");
    }

    @Test
    void what_spoils_on_the_shelf_goes_from_kit_or_store_to_scrap() {
        paper.kit("K-1").event(SCRAPPED, "K-1", SEALANT, null);
        assertThat(lastMoves()).containsExactly("KIT(K-1) > SCRAP: 3.5 QM-4475, kit K-1");
        paper.event(SCRAPPED, null, SEALANT, "2");
        assertThat(lastMoves()).containsExactly("STORE > SCRAP: 2 QM-4475, loose");
    }

    @Test
    void an_event_with_a_kit_and_no_part_concerns_all_of_the_kit() {
        paper.kit("K-1").event(RETURNED, "K-1", null, null);
        assertThat(holds(Account.RETURNED)).isEqualTo(WHOLE);
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{}");
    }

    @Test
    void what_is_found_missing_later_goes_back_to_the_supplier_from_the_box() {
        paper.kit("K-1").event(SHORT, "K-1", WASHER, "1");
        assertThat(lastMoves()).containsExactly("KIT(K-1) > SUPPLIER: 1 QM-4473, kit K-1");
    }

    @Test
    void what_is_found_missing_on_the_bench_goes_back_to_the_supplier_from_there() {
        paper.kit("K-1").issueKit("K-1", "J-1").event(SHORT, "K-1", WASHER, "1");
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > SUPPLIER: 1 QM-4473, kit K-1");
    }

    @Test
    void what_is_missing_beyond_what_lies_there_leaves_the_bench_below_zero() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", WASHER, "4", Condition.NEW);
        paper.event(SHORT, "K-1", WASHER, "1");
        assertThat(holds(Account.bench("J-1"))).contains(WASHER + "=-1");
    }

    @Test
    void a_kit_missing_altogether_goes_back_from_box_and_bench() {
        paper.kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", WASHER, "2", Condition.PUT_BACK, "K-1").event(SHORT, "K-1", null, null);
        assertThat(holds(Account.bench("J-1"))).isEqualTo("{}");
        assertThat(holds(Account.kit("K-1"))).isEqualTo("{}");
        assertThat(holds(Account.SUPPLIER)).isEqualTo("{}");
    }

    @Test
    void loose_parts_go_to_another_site_and_come_back_through_transit() {
        paper.event(SENT, null, WASHER, "4");
        assertThat(lastMoves()).containsExactly("STORE > TRANSIT(SOUTH): 4 QM-4473, loose");
        paper.event(ARRIVED, null, WASHER, "4");
        assertThat(lastMoves()).containsExactly("TRANSIT(SOUTH) > STORE: 4 QM-4473, loose");
    }

    @Test
    void a_kit_that_comes_back_from_another_site_brings_what_was_sent() {
        paper.kit("K-1", WASHER + ":2").event(SENT, "K-1", null, null);
        assertThat(holds(Account.transit("SOUTH"))).contains(WASHER + "=2");
        paper.event(ARRIVED, "K-1", null, null);
        assertThat(holds(Account.kit("K-1"))).contains(WASHER + "=2");
        assertThat(holds(Account.transit("SOUTH"))).isEqualTo("{}");
    }

    @Test
    void a_kit_of_another_site_arrives_with_its_contents() {
        paper.kitOfAnotherSite("K-9").event(ARRIVED, "K-9", null, null);
        assertThat(holds(Account.kit("K-9"))).isEqualTo(WHOLE);
        assertThat(holds(Account.transit("SOUTH"))).contains(WASHER + "=-4");
    }

    @Test
    void an_arrival_comes_before_an_issue_of_the_same_instant() {
        paper.at("2026-03-05T14:00:00Z").issueKit("K-9", "J-1").kitOfAnotherSite("K-9");
        paper.event(ARRIVED, "K-9", null, null);
        assertThat(holds(Account.bench("J-1"))).isEqualTo(WHOLE);
    }

    @Test
    void the_rest_of_a_measured_part_is_scrapped_at_completion() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", SEALANT, "3.2", Condition.NEW);
        paper.complete("J-1", SEALANT);
        assertThat(lastMoves()).containsExactly("BENCH(J-1) > SCRAP: 0.3 QM-4475, kit K-1");
    }

    @Test
    void a_measured_bench_below_zero_stays_so_at_completion() {
        paper.kit("K-1").issueKit("K-1", "J-1").use("J-1", SEALANT, "4", Condition.NEW);
        paper.complete("J-1", SEALANT);
        assertThat(lastMoves()).isEmpty();
        assertThat(holds(Account.bench("J-1"))).contains(SEALANT + "=-0.5");
    }

    @Test
    void a_use_of_the_moment_of_completion_is_done_before_the_rest_is_scrapped() {
        paper.kit("K-1").issueKit("K-1", "J-1").at("2026-03-05T14:00:00Z");
        paper.complete("J-1", SEALANT).use("J-1", SEALANT, "3.5", Condition.NEW);
        assertThat(holds(Account.SCRAP)).isEqualTo("{}");
    }
}
