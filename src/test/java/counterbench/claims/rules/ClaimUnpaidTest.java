package counterbench.claims.rules;

import static counterbench.claims.ClaimStory.at;
import static counterbench.claims.ClaimStory.submitted;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.ClaimSketch;
import counterbench.claims.ClaimStory;
import counterbench.claims.Credit;
import org.junit.jupiter.api.Test;

/** Submitted on 2026-03-10 with 45 days of patience: the day 2026-04-24 is the last. */
class ClaimUnpaidTest {
    private static final ClaimUnpaid RULE = new ClaimUnpaid();
    private static final String OVER = "2026-04-25T00:00";

    private static ClaimStory story() {
        return submitted("2026-03-10");
    }

    @Test
    void a_claim_without_a_credit_when_patience_is_over_is_a_finding() {
        assertThat(story().asOf(OVER).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "claim CL-1: submitted on 2026-03-10, no credit by"
                                                    + " 2026-04-24");
                            assertThat(f.evidence())
                                    .isEqualTo(
                                            "submitted on 2026-03-10, patience until 2026-04-24");
                        });
    }

    @Test
    void on_the_last_day_patience_holds_and_the_clock_will_tell() {
        ClaimStory story = story().asOf(at(OVER).minusNanos(1000));
        assertThat(story.judgedBy(RULE)).isEmpty();
        assertThat(story.changesBy(RULE)).contains(at(OVER));
    }

    @Test
    void any_credit_but_a_core_credit_ends_the_waiting() {
        assertThat(story().credited(Credit.Kind.CLAIM, "1").judgedBy(RULE)).isEmpty();
        assertThat(story().credited(Credit.Kind.REVERSAL, "-1").judgedBy(RULE)).isEmpty();
        assertThat(story().credited(Credit.Kind.CORE, "480").judgedBy(RULE)).hasSize(1);
    }

    @Test
    void a_claim_withdrawn_or_denied_was_not_paid_either() {
        ClaimSketch withdrawn = new ClaimSketch("CL-1", 5, "2026-03-10").withdrawnOn("2026-03-20");
        ClaimSketch denied = new ClaimSketch("CL-1", 5, "2026-03-10").deniedOn("2026-03-20");
        for (ClaimSketch sketch : new ClaimSketch[] {withdrawn, denied}) {
            ClaimStory story = ClaimStory.of(sketch.claim());
            assertThat(story.asOf(OVER).judgedBy(RULE)).hasSize(1);
        }
    }
}
