package counterbench.claims.rules;

import static counterbench.claims.ClaimStory.at;
import static counterbench.claims.ClaimStory.claim;
import static counterbench.claims.ClaimStory.submitted;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.ClaimSketch;
import counterbench.claims.ClaimStory;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

/** The claim that is judged is CL-1, submitted on 2026-03-10 in row 5. */
class ClaimedTwiceTest {
    private static final ClaimedTwice RULE = new ClaimedTwice();

    private static ClaimStory story() {
        return submitted("2026-03-10");
    }

    @Test
    void an_earlier_claim_of_the_job_is_a_finding() {
        assertThat(
                        story().beside(
                                        claim("CL-3", 9, "2026-03-09"),
                                        claim("CL-2", 8, "2026-03-08"))
                                .judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "claim CL-1: job J-1 was claimed before by CL-2 of"
                                                    + " 2026-03-08, CL-3 of 2026-03-09");
                            assertThat(f.evidence())
                                    .isEqualTo(
                                            "job J-1, earlier CL-2 of 2026-03-08, CL-3 of"
                                                    + " 2026-03-09");
                            assertThat(f.month()).isEqualTo(YearMonth.of(2026, 3));
                            assertThat(f.campaign()).isEqualTo("QM-26-014");
                        });
    }

    @Test
    void a_later_claim_is_not() {
        assertThat(story().beside(claim("CL-2", 1, "2026-03-11")).judgedBy(RULE)).isEmpty();
    }

    @Test
    void on_one_day_the_earlier_row_is_the_earlier_claim() {
        assertThat(story().beside(claim("CL-2", 4, "2026-03-10")).judgedBy(RULE)).hasSize(1);
        assertThat(story().beside(claim("CL-2", 6, "2026-03-10")).judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_claim_of_another_job_is_not() {
        ClaimSketch other = new ClaimSketch("CL-2", 1, "2026-03-01").ofJob("J-2");
        assertThat(story().beside(other.claim()).judgedBy(RULE)).isEmpty();
    }

    @Test
    void an_earlier_claim_withdrawn_or_denied_does_not_stand_from_the_start_of_that_day() {
        ClaimSketch withdrawn = new ClaimSketch("CL-2", 1, "2026-03-01").withdrawnOn("2026-03-20");
        ClaimSketch denied = new ClaimSketch("CL-2", 1, "2026-03-01").deniedOn("2026-03-20");
        for (ClaimSketch earlier : new ClaimSketch[] {withdrawn, denied}) {
            ClaimStory story = story().beside(earlier.claim());
            assertThat(story.asOf("2026-03-20T00:00").judgedBy(RULE)).isEmpty();
            story.asOf("2026-03-19T23:59");
            assertThat(story.judgedBy(RULE)).hasSize(1);
            assertThat(story.changesBy(RULE)).contains(at("2026-03-20T00:00"));
        }
    }

    @Test
    void a_claim_that_replaces_the_earlier_one_is_judged_alike() {
        ClaimSketch replacing = new ClaimSketch("CL-1", 5, "2026-03-10").replacing("CL-2");
        assertThat(
                        ClaimStory.of(replacing.claim())
                                .beside(claim("CL-2", 1, "2026-03-01"))
                                .judgedBy(RULE))
                .hasSize(1);
    }
}
