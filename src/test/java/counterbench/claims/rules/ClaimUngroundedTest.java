package counterbench.claims.rules;

import static counterbench.campaign.ClaimTerms.Needs.CORE_ACKNOWLEDGED;
import static counterbench.campaign.ClaimTerms.Needs.CORE_SHIPPED;
import static counterbench.campaign.ClaimTerms.Needs.NONE;
import static counterbench.claims.ClaimStory.at;
import static counterbench.claims.ClaimStory.job;
import static counterbench.claims.ClaimStory.submitted;
import static counterbench.claims.ClaimStory.terms;
import static counterbench.claims.ClaimStory.termsForALook;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.ClaimTerms;
import counterbench.claims.ClaimStory;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

class ClaimUngroundedTest {
    private static final ClaimUngrounded RULE = new ClaimUngrounded();
    private static final ClaimTerms PAYING_FOR_A_LOOK = termsForALook(60, CORE_SHIPPED);

    private static ClaimStory completed(String at) {
        return submitted("2026-03-10").in(job(at(at), Outcome.COMPLETED));
    }

    @Test
    void a_job_completed_by_the_end_of_the_day_grounds_its_claim() {
        assertThat(completed("2026-03-10T23:59").judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_job_completed_at_the_midnight_after_does_not() {
        assertThat(completed("2026-03-11T00:00").judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "claim CL-1: submitted on 2026-03-10, when job J-1 was"
                                                    + " not completed");
                            assertThat(f.evidence())
                                    .isEqualTo("on 2026-03-10 job J-1 was not completed");
                        });
    }

    @Test
    void a_job_open_abandoned_or_unknown_does_not() {
        assertThat(submitted("2026-03-10").in(job(null, null)).judgedBy(RULE)).hasSize(1);
        assertThat(submitted("2026-03-10").in(null).judgedBy(RULE)).hasSize(1);
        assertThat(
                        submitted("2026-03-10")
                                .in(job(at("2026-03-05T12:00"), Outcome.ABANDONED))
                                .judgedBy(RULE))
                .hasSize(1);
    }

    @Test
    void a_core_that_did_not_meet_the_needs_is_a_finding() {
        ClaimStory story = completed("2026-03-05T12:00").needsMet(false);
        assertThat(story.under(terms(60, CORE_SHIPPED)).judgedBy(RULE))
                .singleElement()
                .returns("on 2026-03-10 its core was not shipped", Finding::evidence);
        assertThat(story.under(terms(60, CORE_ACKNOWLEDGED)).judgedBy(RULE))
                .singleElement()
                .returns("on 2026-03-10 its core was not acknowledged", Finding::evidence);
        assertThat(story.needsMet(true).judgedBy(RULE)).isEmpty();
    }

    @Test
    void terms_that_need_no_core_and_no_terms_are_met() {
        ClaimStory story = completed("2026-03-05T12:00").needsMet(false);
        assertThat(story.under(terms(60, NONE)).judgedBy(RULE)).isEmpty();
        assertThat(story.under(null).judgedBy(RULE)).isEmpty();
    }

    @Test
    void job_and_core_together_are_one_finding() {
        ClaimStory story = submitted("2026-03-10").in(job(null, null)).needsMet(false);
        assertThat(story.under(terms(60, CORE_SHIPPED)).judgedBy(RULE))
                .singleElement()
                .returns(
                        "on 2026-03-10 job J-1 was not completed and its core was not shipped",
                        Finding::evidence);
    }

    @Test
    void a_job_closed_as_not_needed_grounds_a_claim_only_where_the_terms_pay_for_that() {
        ClaimStory story =
                submitted("2026-03-10")
                        .in(job(at("2026-03-05T12:00"), Outcome.NOT_NEEDED))
                        .needsMet(false);
        assertThat(story.under(terms(60, CORE_SHIPPED)).judgedBy(RULE))
                .singleElement()
                .returns(
                        "on 2026-03-10 job J-1 was not completed and its core was not shipped",
                        Finding::evidence);
        assertThat(story.under(PAYING_FOR_A_LOOK).judgedBy(RULE)).isEmpty();
        assertThat(
                        submitted("2026-03-10")
                                .in(job(at("2026-03-11T00:00"), Outcome.NOT_NEEDED))
                                .under(PAYING_FOR_A_LOOK)
                                .judgedBy(RULE))
                .singleElement()
                .returns("on 2026-03-10 job J-1 was not completed", Finding::evidence);
    }
}
