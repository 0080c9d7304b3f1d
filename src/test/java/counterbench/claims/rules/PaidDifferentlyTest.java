package counterbench.claims.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.ClaimSketch;
import counterbench.claims.ClaimStory;
import counterbench.claims.Credit;
import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

/** The claim asks for 200.00 labour, 100.00 parts and 480.00 core charge: 780.00 in all. */
class PaidDifferentlyTest {
    private static final PaidDifferently RULE = new PaidDifferently();

    private static ClaimStory story() {
        return ClaimStory.of(
                new ClaimSketch("CL-1", 5, "2026-03-10")
                        .labour("200.00")
                        .parts("100.00")
                        .coreCharge("480.00")
                        .claim());
    }

    @Test
    void credits_that_do_not_sum_to_the_total_are_a_finding() {
        assertThat(story().credited(Credit.Kind.CLAIM, "779.99").judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "claim CL-1: claimed 780.00 USD, credited 779.99 USD,"
                                                    + " difference -0.01 USD");
                            assertThat(f.evidence())
                                    .isEqualTo("claimed 780.00 USD, credited 779.99 USD");
                        });
    }

    @Test
    void credits_that_sum_to_the_total_are_in_order_whatever_their_digits() {
        ClaimStory story = story().credited(Credit.Kind.CLAIM, "700");
        assertThat(story.credited(Credit.Kind.CLAIM, "80.000").judgedBy(RULE)).isEmpty();
    }

    @Test
    void reversals_count_and_core_credits_do_not() {
        ClaimStory paid = story().credited(Credit.Kind.CLAIM, "780");
        assertThat(paid.credited(Credit.Kind.CORE, "480").judgedBy(RULE)).isEmpty();
        assertThat(paid.credited(Credit.Kind.REVERSAL, "-780").judgedBy(RULE))
                .singleElement()
                .returns("claimed 780.00 USD, credited 0.00 USD", Finding::evidence);
    }

    @Test
    void amounts_that_a_claim_does_not_state_add_nothing() {
        ClaimSketch labourOnly = new ClaimSketch("CL-1", 5, "2026-03-10").labour("200");
        assertThat(
                        ClaimStory.of(labourOnly.claim())
                                .credited(Credit.Kind.CLAIM, "200.00")
                                .judgedBy(RULE))
                .isEmpty();
    }

    @Test
    void a_claim_without_credits_or_without_amounts_is_not_judged() {
        assertThat(story().judgedBy(RULE)).isEmpty();
        assertThat(story().credited(Credit.Kind.CORE, "480").judgedBy(RULE)).isEmpty();
        assertThat(
                        ClaimStory.submitted("2026-03-10")
                                .credited(Credit.Kind.CLAIM, "780")
                                .judgedBy(RULE))
                .isEmpty();
    }
}
