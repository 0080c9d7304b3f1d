package counterbench.claims.matching;

import static counterbench.claims.matching.MatchingTest.CLAIMS;
import static counterbench.claims.matching.MatchingTest.VIN_17;
import static counterbench.claims.matching.MatchingTest.candidate;
import static counterbench.claims.matching.MatchingTest.credit;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.Credit;
import counterbench.claims.matching.Proposal.Verdict;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Lines that take back what was paid, all of it or a part. */
class ReversalMatchingTest {
    @Test
    void a_reversal_is_paired_with_the_claim_that_was_paid() {
        List<Candidate> paid = List.of(candidate("CN-017", VIN_17, "685.85"), CLAIMS.get(1));

        Proposal proposal =
                Matching.of(List.of(credit("1", "CN-0I7", VIN_17, "-685.85", "2026-02-13")), paid)
                        .get(0);

        assertThat(proposal.verdict()).isEqualTo(Verdict.SURE);
        assertThat(proposal.why()).contains("it takes back what the claim asks");
    }

    private static Proposal reversal(@Nullable String claim, @Nullable String core, String amount) {
        Credit credit =
                new Credit(
                        "RM-2",
                        "1",
                        new BigDecimal(amount),
                        LocalDate.parse("2026-03-13"),
                        claim,
                        null,
                        core,
                        null,
                        Credit.Kind.REVERSAL);
        Candidate paid =
                new Candidate(
                        CLAIMS.get(0).claim(),
                        VIN_17,
                        List.of(new Candidate.Core("NC-0013", "7P331902")),
                        new BigDecimal("685.85"));
        return Matching.of(List.of(credit), List.of(paid, CLAIMS.get(1))).get(0);
    }

    @Test
    void a_reversal_of_a_part_is_matched_where_it_names_its_claim_or_core() {
        assertThat(reversal("CN-017", null, "-120.00").verdict()).isEqualTo(Verdict.AS_NAMED);
        Proposal ofCore = reversal(null, "NC-0013", "-120.00");
        assertThat(ofCore.verdict()).isEqualTo(Verdict.SURE);
        assertThat(ofCore.shares().get(0).candidate().name()).isEqualTo("CN-017");
        assertThat(ofCore.why())
                .isEqualTo("the core fits, it takes back part of what came for the claim");
    }

    @Test
    void a_reversal_of_a_part_stays_doubtful_where_it_names_neither_clearly_or_nothing_came() {
        assertThat(reversal("CN-0I7", null, "-120.00").verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(reversal(null, "NC-O013", "-120.00").verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(reversal("CN-017", null, "-700.00").why())
                .isEqualTo("nothing but the number says that it is claim CN-017");
        assertThat(reversal(null, "NC-0013", "-700.00").verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(reversal("CN-071", null, "-120.00").why())
                .isEqualTo("nothing but the number says that it is claim CN-071");
    }

    @Test
    void a_part_is_taken_back_of_what_came_by_a_line_that_names_its_claim() {
        List<Proposal> lines =
                Matching.of(
                        List.of(
                                credit("1", "CN-017", null, "685.85", "2026-02-13"),
                                credit("2", "CN-017", null, "-120.00", "2026-03-13")),
                        CLAIMS);

        assertThat(lines).extracting(Proposal::verdict).containsOnly(Verdict.AS_NAMED);
    }

    @Test
    void parts_that_come_to_more_than_was_paid_are_asked() {
        List<Proposal> lines =
                Matching.of(
                        List.of(
                                credit("1", "CN-017", null, "-400.00", "2026-03-13"),
                                credit("2", "CN-017", null, "-400.00", "2026-03-13")),
                        List.of(candidate("CN-017", VIN_17, "685.85")));

        assertThat(lines).extracting(Proposal::verdict).containsOnly(Verdict.DOUBTFUL);
        assertThat(lines.get(0).why())
                .isEqualTo("with it, more is taken back from claim CN-017 than came for it");
    }
}
