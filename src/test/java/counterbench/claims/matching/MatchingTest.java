package counterbench.claims.matching;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.Claim;
import counterbench.claims.ClaimSketch;
import counterbench.claims.Credit;
import counterbench.claims.matching.Proposal.Verdict;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MatchingTest {
    static final String VIN_17 = "0LKRF8D40NS000592";
    private static final String VIN_71 = "0WBSH08D7MS000443";

    static Candidate candidate(String name, String vin, String credited) {
        Claim claim =
                new ClaimSketch(name, 1, "2026-01-21").labour("259.60").parts("426.25").claim();
        return new Candidate(claim, vin, List.of(), new BigDecimal(credited));
    }

    static final List<Candidate> CLAIMS =
            List.of(candidate("CN-017", VIN_17, "0"), candidate("CN-071", VIN_71, "0"));

    private static Credit credit(@Nullable String claim, @Nullable String vin, String amount) {
        return credit("1", claim, vin, amount, "2026-02-13");
    }

    static Credit credit(
            String line, @Nullable String claim, @Nullable String vin, String amount, String paid) {
        return new Credit(
                "RM-1",
                line,
                new BigDecimal(amount),
                LocalDate.parse(paid),
                claim,
                vin,
                null,
                null,
                amount.startsWith("-") ? Credit.Kind.REVERSAL : Credit.Kind.CLAIM);
    }

    private static Proposal propose(Credit... credits) {
        return Matching.of(List.of(credits), CLAIMS).get(0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void of_remittances_with_slips_no_wrong_pair_is_taken_and_nearly_all_right_ones(long seed) {
        Remittances typed = new Remittances(seed, 0.05, 300);

        List<Proposal> proposals = Matching.of(typed.truth.keySet(), typed.claims);

        long right = 0;
        for (Proposal proposal : proposals) {
            String taken = Remittances.taken(proposal);
            String meant = typed.truth.get(proposal.credit());
            if (taken != null) {
                assertThat(taken)
                        .as("seed %d, %s: %s", seed, proposal.credit(), proposal.why())
                        .isEqualTo(meant);
                right++;
            }
        }
        assertThat(right).isGreaterThan(proposals.size() * 95 / 100);
    }

    @Test
    void a_credit_that_names_its_claim_and_fits_is_taken_as_it_is() {
        assertThat(propose(credit("CN-017", VIN_17, "685.85")).verdict())
                .isEqualTo(Verdict.AS_NAMED);
        assertThat(propose(credit("CN-017", null, "685.85")).verdict()).isEqualTo(Verdict.AS_NAMED);
    }

    @Test
    void one_that_names_a_claim_of_another_vehicle_is_asked() {
        Proposal proposal = propose(credit("CN-071", VIN_17, "685.85"));

        assertThat(proposal.verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(proposal.why())
                .isEqualTo("it names claim CN-071, but it names VIN 0LKRF8D40NS000592");
        assertThat(proposal.ranked().get(0).candidate().name()).isEqualTo("CN-017");
    }

    @Test
    void one_that_only_a_number_pairs_with_a_claim_is_asked() {
        assertThat(propose(credit("CN-017", null, "500.00")).why())
                .isEqualTo("nothing but the number says that it is claim CN-017");
    }

    @Test
    void a_slip_in_the_number_is_told_where_the_vehicle_fits_and_short_payments_are_paired() {
        Proposal proposal = propose(credit("CN-O17", VIN_17, "600.00"));

        assertThat(proposal.verdict()).isEqualTo(Verdict.SURE);
        assertThat(proposal.shares().get(0).candidate().name()).isEqualTo("CN-017");
        assertThat(proposal.why())
                .contains("the claim is one slip from CN-017")
                .contains("but the amount is not what is open, 685.85");
    }

    @Test
    void two_claims_that_are_alike_are_never_told_apart_by_a_guess() {
        assertThat(propose(credit(null, null, "685.85")).verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(propose(credit("CN-0l7", null, "685.85")).verdict()).isEqualTo(Verdict.DOUBTFUL);
    }

    @Test
    void what_comes_twice_is_asked_on_both_sides() {
        List<Proposal> twice =
                Matching.of(
                        List.of(
                                credit("1", null, VIN_17, "685.85", "2026-02-13"),
                                credit("2", null, VIN_17, "685.85", "2026-02-13")),
                        CLAIMS);

        assertThat(twice).extracting(Proposal::verdict).containsOnly(Verdict.DOUBTFUL);
        assertThat(twice.get(0).why())
                .isEqualTo("with it, more comes for claim CN-017 than it asks");
    }

    @Test
    void several_credits_for_one_claim_and_one_credit_for_several() {
        List<Proposal> lines =
                Matching.of(
                        List.of(
                                credit("1", "CN-017", null, "259.60", "2026-02-13"),
                                credit("2", "CN-017", null, "426.25", "2026-02-13")),
                        CLAIMS);
        Proposal both = propose(credit("CN-017, CN-071", null, "1371.70"));

        assertThat(lines).extracting(Proposal::verdict).containsOnly(Verdict.AS_NAMED);
        assertThat(both.verdict()).isEqualTo(Verdict.SURE);
        assertThat(both.shares())
                .extracting(s -> s.candidate().name() + " " + s.amount())
                .containsExactly("CN-017 685.85", "CN-071 685.85");
        assertThat(propose(credit("CN-017, CN-071", null, "1000.00")).why())
                .isEqualTo("it names CN-017, CN-071, for which 1371.70 is open");
    }

    @Test
    void money_that_came_before_the_claim_is_not_for_it() {
        Proposal proposal = propose(credit("1", "CN-017", VIN_17, "685.85", "2026-01-20"));

        assertThat(proposal.verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(proposal.why()).contains("it was paid before the claim was submitted");
        assertThat(proposal.choices()).isEmpty();
    }

    @Test
    void a_claim_is_offered_from_the_day_on_that_it_was_submitted() {
        Claim later = new ClaimSketch("CN-090", 1, "2026-02-14").labour("685.85").claim();
        List<Candidate> claims = new ArrayList<>(CLAIMS);
        claims.add(new Candidate(later, VIN_71, List.of(), BigDecimal.ZERO));

        assertThat(offered(claims, credit("1", null, null, "685.85", "2026-02-13")))
                .containsExactly("CN-017", "CN-071");
        assertThat(offered(claims, credit("1", null, null, "685.85", "2026-02-14")))
                .containsExactly("CN-017", "CN-071", "CN-090");
        assertThat(offered(claims, credit("1", "CN-017 and CN-090", null, "9.00", "2026-02-13")))
                .containsExactly("CN-017");
        assertThat(propose(credit("1", null, VIN_17, "685.85", "2026-01-20")).verdict())
                .isEqualTo(Verdict.UNKNOWN);
    }

    private static List<String> offered(List<Candidate> claims, Credit credit) {
        return Matching.of(List.of(credit), claims).get(0).choices().stream()
                .map(ranked -> ranked.candidate().name())
                .toList();
    }

    @Test
    void one_that_names_a_claim_twice_is_asked_and_offers_it_once() {
        Proposal twice = propose(credit("CN-017, CN-017", null, "1371.70"));

        assertThat(twice.verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(twice.why()).isEqualTo("it names CN-017, CN-017, for which 685.85 is open");
        assertThat(twice.choices()).extracting(r -> r.candidate().name()).containsExactly("CN-017");
    }

    @Test
    void a_core_credit_with_a_slip_is_paired_also_before_the_claim_and_where_it_names_it() {
        Candidate claim =
                new Candidate(
                        CLAIMS.get(0).claim(),
                        VIN_17,
                        List.of(new Candidate.Core("NC-0013", "7P331902")),
                        BigDecimal.ZERO);

        Proposal early = core(claim, null, "NC-O013", "7P331902", "2026-01-20");
        Proposal named = core(claim, "CN-017", "NC-O013", null, "2026-02-13");
        Proposal alone = core(claim, "CN-017", null, null, "2026-02-13");

        assertThat(early.verdict()).isEqualTo(Verdict.SURE);
        assertThat(named.verdict()).isEqualTo(Verdict.SURE);
        assertThat(named.why()).isEqualTo("the claim fits, the core is one slip from NC-0013");
        assertThat(alone.verdict()).isEqualTo(Verdict.DOUBTFUL);
    }

    private static Proposal core(
            Candidate claim,
            @Nullable String name,
            @Nullable String tag,
            @Nullable String serial,
            String paid) {
        Credit credit =
                new Credit(
                        "RM-1",
                        "1",
                        new BigDecimal("395.00"),
                        LocalDate.parse(paid),
                        name,
                        null,
                        tag,
                        serial,
                        Credit.Kind.CORE);
        return Matching.of(List.of(credit), List.of(claim, CLAIMS.get(1))).get(0);
    }

    @Test
    void a_credit_like_no_claim_is_said_to_be_unknown() {
        assertThat(propose(credit("KX-118", null, "412.36")).verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void what_names_its_claim_rightly_has_come_before_the_rest_is_judged() {
        List<Proposal> lines =
                Matching.of(
                        List.of(
                                credit("1", "CN-017", VIN_17, "685.85", "2026-02-13"),
                                credit("2", null, VIN_71, "685.85", "2026-02-13"),
                                credit("3", "CN-O17", null, "685.85", "2026-02-13")),
                        CLAIMS);

        assertThat(lines)
                .extracting(Proposal::verdict)
                .containsExactly(Verdict.AS_NAMED, Verdict.SURE, Verdict.DOUBTFUL);
        assertThat(lines.get(2).ranked())
                .filteredOn(r -> r.candidate().name().equals("CN-017"))
                .singleElement()
                .satisfies(
                        r ->
                                assertThat(r.likeness().words())
                                        .contains("but the amount is not what is open, 0"));
    }

    @Test
    void of_two_that_fit_alike_both_are_the_best_and_can_be_chosen() {
        Proposal proposal = propose(credit(null, null, "685.85"));

        assertThat(proposal.best())
                .extracting(r -> r.candidate().name())
                .containsExactly("CN-017", "CN-071");
    }

    @Test
    void claims_that_are_paid_crowd_out_none_that_wait_and_are_no_choice_unless_named() {
        List<Candidate> many = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            many.add(candidate("CN-01" + i, "0WBSH08D7MS00044" + i, i == 9 ? "0" : "685.85"));
        }

        Proposal unnamed = Matching.of(List.of(credit("CN-01O", null, "600.00")), many).get(0);
        Proposal named = Matching.of(List.of(credit("CN-011", null, "600.00")), many).get(0);
        Proposal onlyPaid =
                Matching.of(List.of(credit("CN-01O", null, "600.00")), many.subList(0, 8)).get(0);

        assertThat(unnamed.choices())
                .extracting(r -> r.candidate().name())
                .containsExactly("CN-019");
        assertThat(named.choices())
                .extracting(r -> r.candidate().name())
                .containsExactly("CN-011", "CN-019");
        assertThat(onlyPaid.choices()).hasSize(8);
    }
}
