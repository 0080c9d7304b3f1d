package counterbench.claims.rules;

import static counterbench.campaign.ClaimTerms.Needs.NONE;
import static counterbench.claims.ClaimStory.at;
import static counterbench.claims.ClaimStory.job;
import static counterbench.claims.ClaimStory.submitted;
import static counterbench.claims.ClaimStory.terms;
import static counterbench.claims.ClaimStory.termsForALook;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

/** The job is completed on 2026-03-05, claims are due within 60 days: 2026-05-04 is the last. */
class ClaimedLateTest {
    private static final ClaimedLate RULE = new ClaimedLate();

    @Test
    void a_claim_after_the_last_day_is_a_finding() {
        assertThat(submitted("2026-05-05").judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "claim CL-1: due by 2026-05-04, submitted on"
                                                    + " 2026-05-05");
                            assertThat(f.evidence())
                                    .isEqualTo("due by 2026-05-04, submitted on 2026-05-05");
                        });
    }

    @Test
    void a_claim_on_the_last_day_is_in_time() {
        assertThat(submitted("2026-05-04").judgedBy(RULE)).isEmpty();
    }

    @Test
    void the_day_of_completion_is_that_of_the_site() {
        var lateInTheEvening = job(at("2026-03-05T23:59"), Outcome.COMPLETED);
        assertThat(submitted("2026-05-05").in(lateInTheEvening).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void a_job_not_completed_or_unknown_and_terms_without_a_limit_are_not_judged() {
        assertThat(submitted("2026-12-01").in(job(null, null)).judgedBy(RULE)).isEmpty();
        assertThat(submitted("2026-12-01").in(null).judgedBy(RULE)).isEmpty();
        assertThat(
                        submitted("2026-12-01")
                                .in(job(at("2026-03-05T12:00"), Outcome.NOT_NEEDED))
                                .judgedBy(RULE))
                .isEmpty();
        assertThat(submitted("2026-12-01").under(terms(null, NONE)).judgedBy(RULE)).isEmpty();
        assertThat(submitted("2026-12-01").under(null).judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_job_closed_as_not_needed_counts_from_its_end_where_the_terms_pay_for_that() {
        var looked = job(at("2026-03-05T12:00"), Outcome.NOT_NEEDED);
        var terms = termsForALook(60, NONE);
        assertThat(submitted("2026-05-05").in(looked).under(terms).judgedBy(RULE))
                .singleElement()
                .returns("due by 2026-05-04, submitted on 2026-05-05", Finding::evidence);
        assertThat(submitted("2026-05-04").in(looked).under(terms).judgedBy(RULE)).isEmpty();
        assertThat(
                        submitted("2026-05-05")
                                .in(looked)
                                .under(termsForALook(null, NONE))
                                .judgedBy(RULE))
                .isEmpty();
        var abandoned = job(at("2026-03-05T12:00"), Outcome.ABANDONED);
        assertThat(submitted("2026-05-05").in(abandoned).under(terms).judgedBy(RULE)).isEmpty();
    }
}
