package counterbench.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import org.junit.jupiter.api.Test;

/** Small papers about goods, vehicles and claims, whose findings follow by hand from the text. */
class OracleTest {

    @Test
    void a_job_in_order_has_no_finding() {
        assertThat(new Paper().findings()).isEmpty();
    }

    @Test
    void a_refitted_washer_is_reuse_and_stays_visible_on_the_bench() {
        Paper paper =
                new Paper()
                        .change("uses", "part=T3", "quantity=3")
                        .add(
                                "uses",
                                "job=J1|part=T3|quantity=1|condition=reused|at=2026-03-05 09:11");
        assertThat(paper.findings())
                .containsExactly("left-on-bench J1 T3", "reused-hardware J1 T3");
        assertThat(paper.balance("BENCH(J1)", "T3")).isEqualTo("1");
    }

    @Test
    void an_old_bolt_under_its_replaced_number_counts_as_the_bolt() {
        Paper paper =
                new Paper()
                        .change("uses", "part=T2", "part=T0|condition=reused")
                        .add(
                                "uses",
                                "job=J1|part=T2|quantity=1|condition=put-back|at=2026-03-05 09:30");
        assertThat(paper.findings()).containsExactly("reused-hardware J1 T2");
        assertThat(paper.balance("STORE", "T2")).isEqualTo("1");
    }

    @Test
    void a_new_washer_taken_off_goes_to_scrap_and_a_loose_one_makes_good() {
        Paper paper =
                new Paper()
                        .add(
                                "uses",
                                "job=J1|part=T3|quantity=1|condition=taken-off|was=new|at=2026-03-05 11:00")
                        .add("receipts", "part=T3|quantity=10|received_at=2026-03-01 08:00")
                        .add("issues", "job=J1|part=T3|quantity=1|at=2026-03-05 11:05")
                        .add("uses", "job=J1|part=T3|quantity=1|condition=new|at=2026-03-05 11:10");
        assertThat(paper.findings()).isEmpty();
        assertThat(paper.balance("VEHICLE(J1)", "T3")).isEqualTo("4");
        assertThat(paper.balance("SCRAP", "T3")).isEqualTo("1");
        assertThat(paper.balance("STORE", "T3")).isEqualTo("9");
    }

    @Test
    void what_is_fitted_after_completion_is_not_on_the_vehicle_at_completion() {
        Paper paper = new Paper().change("uses", "part=T3", "at=2026-03-05 14:01");
        assertThat(paper.findings()).containsExactly("hardware-short J1 T3");
        Paper atCompletion = new Paper().change("uses", "part=T3", "at=2026-03-05 14:00");
        assertThat(atCompletion.findings()).isEmpty();
    }

    @Test
    void sealant_is_short_below_its_at_least_and_its_rest_is_scrapped() {
        assertThat(new Paper().change("uses", "part=T5", "quantity=3").findings()).isEmpty();
        Paper less = new Paper().change("uses", "part=T5", "quantity=2.999");
        assertThat(less.findings()).containsExactly("hardware-short J1 T5");
        assertThat(less.balance("SCRAP", "T5")).isEqualTo("0.501");
    }

    @Test
    void a_kit_may_be_used_on_its_last_day_and_not_on_the_next() {
        Paper paper = new Paper().change("kits", "kit=K1", "expires_on=2026-03-04");
        assertThat(paper.findings()).containsExactly("expired-when-used J1 T5");
    }

    @Test
    void a_bolt_from_another_kit_splits_the_set_unless_it_is_taken_off_again() {
        Paper split =
                new Paper()
                        .add("kits", "kit=K2|kit_part=TK|received_at=2026-03-02 08:00")
                        .change("uses", "part=T2", "kit=K2");
        assertThat(split.findings())
                .containsExactly(
                        "kit-of-another-job J1 T2", "left-on-bench J1 T2", "matched-set-split J1");
        split.add(
                        "uses",
                        "job=J1|part=T2|quantity=1|condition=taken-off|was=new|kit=K2|at=2026-03-05 09:06")
                .add("uses", "job=J1|part=T2|quantity=1|condition=new|kit=K1|at=2026-03-05 09:07");
        assertThat(split.findings()).containsExactly("kit-of-another-job J1 T2");
        assertThat(split.balance("KIT(K2)", "T2")).isEqualTo("0");
    }

    @Test
    void a_use_of_a_kit_that_lies_on_another_bench_takes_it_from_there() {
        Paper paper =
                new Paper()
                        .add(
                                "jobs",
                                "job=J2|campaign=T|vin=0AAAAAAAAAAAAAAA2|opened_at=2026-03-19 08:00")
                        .add("kits", "kit=K2|kit_part=TK|received_at=2026-03-02 08:00")
                        .add("issues", "job=J2|at=2026-03-05 08:00|kit=K2")
                        .change("uses", "part=T3", "quantity=3")
                        .add(
                                "uses",
                                "job=J1|part=T3|quantity=1|condition=new|kit=K2|at=2026-03-05 09:12");
        assertThat(paper.findings())
                .containsExactly("kit-of-another-job J1 T3", "left-on-bench J1 T3");
        assertThat(paper.balance("BENCH(J2)", "T3")).isEqualTo("3");
        assertThat(paper.balance("KIT(K2)", "T3")).isEqualTo("0");
    }

    @Test
    void a_kit_that_never_came_leaves_the_bench_below_zero() {
        Paper paper =
                new Paper()
                        .change("uses", "part=T3", "quantity=3")
                        .add(
                                "uses",
                                "job=J1|part=T3|quantity=1|condition=new|kit=K9|at=2026-03-05 09:12")
                        .add(
                                "uses",
                                "job=J1|part=T3|quantity=1|condition=scrapped|at=2026-03-05 09:13");
        assertThat(paper.findings()).containsExactly("kit-unknown J1 T3", "left-on-bench J1 T3");
        assertThat(paper.balance("BENCH(J1)", "T3")).isEqualTo("-1");
    }

    @Test
    void a_manual_vehicle_needs_no_automatic_washers_and_has_its_own_step() {
        Paper paper = new Paper().change("vehicles", "gear=auto", "gear=manual");
        assertThat(paper.findings()).containsExactly("hardware-over J1 T4", "step-missing J1 free");
    }

    @Test
    void a_vehicle_without_the_attribute_leaves_the_line_unjudged() {
        Paper paper =
                new Paper()
                        .change("vehicles", "gear=auto", "gear=")
                        .change("uses", "part=T4", "condition=reused")
                        .add(
                                "uses",
                                "job=J1|part=T4|quantity=2|condition=scrapped|at=2026-03-05 11:00");
        assertThat(paper.findings())
                .containsExactly("condition-unknown J1", "reused-hardware J1 T4");
    }

    @Test
    void the_revision_of_the_day_of_completion_judges_the_job_but_not_the_kit() {
        Paper paper = new Paper().revision("2026-03-05", "T3, quantity: 4", "T3, quantity: 5");
        assertThat(paper.findings()).containsExactly("hardware-short J1 T3");
        assertThat(
                        new Paper()
                                .revision("2026-03-06", "T3, quantity: 4", "T3, quantity: 5")
                                .findings())
                .isEmpty();
    }

    @Test
    void a_count_differs_from_the_book_as_it_was_then() {
        Paper paper =
                new Paper()
                        .add("counts", "counted_at=2026-03-10 18:00|part=T3|quantity=9")
                        .add("receipts", "part=T3|quantity=10|received_at=2026-03-09 08:00")
                        .add("receipts", "part=T3|quantity=5|received_at=2026-03-11 08:00");
        assertThat(paper.findings()).containsExactly("count-difference STORE T3");
        assertThat(paper.balance("STORE", "T3")).isEqualTo("14");
        assertThat(paper.balance("COUNT", "T3")).isEqualTo("1");
        paper.add("moves", "event=scrapped|at=2026-03-10 12:00|part=T3|quantity=1");
        assertThat(paper.findings()).isEmpty();
    }

    @Test
    void the_store_is_below_zero_only_after_all_moves_of_an_instant() {
        Paper paper =
                new Paper()
                        .add("moves", "event=returned|at=2026-03-09 08:00|part=T3|quantity=2")
                        .add("receipts", "part=T3|quantity=2|received_at=2026-03-09 08:00");
        assertThat(paper.findings()).isEmpty();
        paper.change("receipts", "part=T3", "received_at=2026-03-09 08:01");
        assertThat(paper.findings()).containsExactly("balance-negative STORE T3");
    }

    @Test
    void a_claim_is_grounded_by_what_stood_at_the_end_of_its_day() {
        assertThat(new Paper().change("claims", "claim=CL1", "submitted_on=2026-03-06").findings())
                .isEmpty();
        assertThat(new Paper().change("claims", "claim=CL1", "submitted_on=2026-03-05").findings())
                .containsExactly("claim-ungrounded CL1");
    }

    @Test
    void credits_must_sum_to_the_claim_core_credits_apart() {
        Paper paper =
                new Paper()
                        .add(
                                "credits",
                                "remittance=R1|line=2|amount=480|paid_on=2026-03-19|claim=CL1|kind=core");
        assertThat(paper.findings()).isEmpty();
        paper.add(
                "credits",
                "remittance=R1|line=3|amount=-280.50|paid_on=2026-03-19|claim=CL1|kind=reversal");
        assertThat(paper.findings()).containsExactly("paid-differently CL1");
        paper.add("credits", "remittance=R1|line=4|amount=1|paid_on=2026-03-19|claim=CL7");
        assertThat(paper.findings())
                .containsExactly("credit-unmatched R1/4", "paid-differently CL1");
    }

    @Test
    void both_tables_of_a_month_follow_from_the_moves() {
        Oracle oracle = new Paper().judge();
        ConsumptionRow washer =
                oracle.consumption("T", YearMonth.of(2026, 3)).stream()
                        .filter(r -> r.part().equals("T3"))
                        .findFirst()
                        .orElseThrow();
        assertThat(washer.required()).isEqualByComparingTo("4");
        assertThat(washer.fittedNew()).isEqualByComparingTo("4");
        assertThat(washer.difference()).isEqualByComparingTo("0");
        GoodsRow sealant =
                oracle.goods("T", YearMonth.of(2026, 3)).stream()
                        .filter(r -> r.part().equals("T5"))
                        .findFirst()
                        .orElseThrow();
        assertThat(sealant.received()).isEqualByComparingTo("3.5");
        assertThat(sealant.fitted()).isEqualByComparingTo("3.2");
        assertThat(sealant.scrapped()).isEqualByComparingTo("0.3");
        assertThat(sealant.closingBook()).isEqualByComparingTo("0");
        assertThat(sealant.unexplained()).isEqualByComparingTo("0");
    }
}
