package counterbench.claims.draft;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.ClaimTerms.Needs;
import counterbench.campaign.ClaimTerms.Operation;
import counterbench.campaign.Condition;
import counterbench.claims.Money;
import counterbench.claims.draft.PartsCost.Item;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.shared.Quantity;
import counterbench.shared.TestSites;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DraftClaimTest {
    private static final Instant NOON = Instant.parse("2026-03-10T17:00:00Z");
    private static final Operation SINGLE = operation("52-110", "1.9", "completed", "single");
    private static final Operation TWIN = operation("52-120", "2.7", "completed", "twin");
    private static final Operation NOTHING =
            new Operation(
                    "52-199",
                    new BigDecimal("0.5"),
                    new Condition(Map.of("outcome", "not-needed")));
    private static final List<Rate> RATES =
            List.of(rate("118.00", "2025-07-01"), rate("121.00", "2026-03-01"));

    private static Operation operation(String name, String hours, String outcome, String hoist) {
        return new Operation(
                name,
                new BigDecimal(hours),
                new Condition(Map.of("outcome", outcome, "hoist", hoist)));
    }

    private static Rate rate(String amount, String from) {
        return new Rate(new BigDecimal(amount), LocalDate.parse(from));
    }

    private static Job job(Outcome outcome, @Nullable String workOrder, Instant at) {
        return new Job(1, "J-1", "C-1", "VIN", at, workOrder, null, at, outcome, null, null);
    }

    private static Draft draft(Job job, Map<String, String> attributes, String cost, String... no) {
        ClaimTerms terms =
                new ClaimTerms(
                        List.of(SINGLE, TWIN, NOTHING), new BigDecimal("25"), 50, Needs.NONE);
        return new DraftClaim(
                        TestSites.NORTH,
                        job,
                        terms,
                        attributes,
                        RATES,
                        new PartsCost(
                                List.of(new Item("kit K-1", Quantity.ONE, new BigDecimal(cost))),
                                List.of(no)),
                        new BigDecimal("395"),
                        List.of())
                .draft();
    }

    @Test
    void labour_is_the_hours_for_the_outcome_at_the_rate_of_the_day_of_completion() {
        Map<String, String> twin = Map.of("hoist", "twin");

        Draft march = draft(job(Outcome.COMPLETED, "W-1", NOON), twin, "0");
        Draft february =
                draft(
                        job(Outcome.COMPLETED, "W-1", Instant.parse("2026-03-01T05:59:59Z")),
                        twin,
                        "0");
        Draft nothing = draft(job(Outcome.NOT_NEEDED, "W-1", NOON), Map.of("hoist", "single"), "0");

        assertThat(march.labour()).isEqualTo("326.70");
        assertThat(march.operation()).isEqualTo("52-120");
        assertThat(february.labour()).isEqualTo("318.60");
        assertThat(nothing.labour()).isEqualTo("60.50");
        assertThat(nothing.operation()).isEqualTo("52-199");
        assertThat(march.submitBy()).isEqualTo("2026-04-29");
    }

    /** Half-even, as NIST SP 811 B.7.1 rounds a lone 5 to the even digit. */
    @Test
    void each_line_is_rounded_half_even_to_the_cent_and_the_total_is_their_sum() {
        Map<String, String> single = Map.of("hoist", "single");
        Job job = job(Outcome.COMPLETED, "W-1", NOON);

        assertThat(draft(job, single, "344.10").parts()).isEqualTo("430.12");
        assertThat(draft(job, single, "344.108").parts()).isEqualTo("430.14");
        assertThat(draft(job, single, "344.116").parts()).isEqualTo("430.14");
        Draft draft = draft(job, single, "344.10");
        assertThat(draft.total())
                .isEqualTo(draft.labour().add(draft.parts()).add(draft.coreCharge()))
                .isEqualTo("1055.02");
    }

    @Test
    void its_lines_add_up_to_its_total_whatever_was_rounded() {
        Draft draft =
                draft(job(Outcome.COMPLETED, "W-1", NOON), Map.of("hoist", "single"), "344.116");

        assertThat(draft.lines())
                .extracting(
                        line ->
                                line.kind().words()
                                        + ", "
                                        + line.what()
                                        + ": "
                                        + Money.text(line.amount()))
                .containsExactly(
                        "labour, operation 52-110: 229.90",
                        "parts, kit K-1: 344.116",
                        "allowance, 25 % on parts, to the cent: 86.024",
                        "core charge, what the terms charge for its cores: 395.00");
        assertThat(draft.lines().stream().map(DraftLine::amount).reduce(BigDecimal::add))
                .hasValueSatisfying(sum -> assertThat(sum).isEqualByComparingTo(draft.total()));
    }

    @Test
    void what_is_not_known_is_said_and_never_guessed() {
        Job noWorkOrder = job(Outcome.COMPLETED, null, NOON);
        Job longAgo = job(Outcome.COMPLETED, "W-1", Instant.parse("2025-06-30T17:00:00Z"));

        assertThat(draft(noWorkOrder, Map.of("hoist", "twin"), "0").lacks())
                .containsExactly(
                        "the job names no work order: import its row of jobs with the number");
        assertThat(draft(longAgo, Map.of("hoist", "twin"), "0").lacks())
                .containsExactly(
                        "no labour rate holds on 2025-06-30: import it with a sheet called rates");
        assertThat(draft(job(Outcome.COMPLETED, "W-1", NOON), Map.of(), "0", "a cost").lacks())
                .containsExactly(
                        "a cost",
                        "the vehicle's row does not say which labour operation is for it: complete"
                                + " it in vehicles");
        assertThat(
                        draft(job(Outcome.COMPLETED, "W-1", NOON), Map.of("hoist", "triple"), "0")
                                .lacks())
                .containsExactly(
                        "no labour operation of the terms is for this vehicle and outcome");
    }
}
