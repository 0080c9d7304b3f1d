package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.job.Job;
import counterbench.job.JudgedJob;
import counterbench.job.Outcome;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.shared.TestSites;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobIdleTest {
    private static final Job OPEN = TestJobs.job("J-118", TestJobs.VIN, null, null);

    private final JobIdle rule = new JobIdle();

    @ParameterizedTest
    @CsvSource({
        "2026-03-05T08:00, false",
        "2026-03-19T23:59, false",
        "2026-03-20T00:00, true",
        "2026-06-01T00:00, true",
    })
    void a_job_opened_on_the_fifth_is_idle_when_the_fourteenth_day_after_is_over(
            String asOf, boolean idle) {
        assertThat(judge(OPEN, asOf).found()).hasSize(idle ? 1 : 0);
    }

    @Test
    void until_then_the_clock_alone_changes_the_outcome_at_that_midnight() {
        assertThat(judge(OPEN, "2026-03-06T08:00").changesAt())
                .contains(TestJobs.at("2026-03-20T00:00"));
        assertThat(judge(OPEN, "2026-03-20T00:00").changesAt()).isEmpty();
    }

    @Test
    void the_evidence_does_not_change_with_the_clock_and_there_is_no_month() {
        Finding early = judge(OPEN, "2026-03-20T00:00").found().get(0);
        Finding late = judge(OPEN, "2026-05-20T00:00").found().get(0);

        assertThat(early).isEqualTo(late);
        assertThat(early.evidence()).isEqualTo("opened 2026-03-05, patience until 2026-03-19");
        assertThat(early.month()).isNull();
    }

    @Test
    void a_job_that_ended_is_not_idle_however_it_ended() {
        for (Outcome outcome : Outcome.values()) {
            Job ended = TestJobs.job("J-1", TestJobs.VIN, TestJobs.COMPLETED, outcome);

            assertThat(judge(ended, "2026-06-01T00:00").found()).isEmpty();
            assertThat(judge(ended, "2026-03-06T00:00").changesAt()).isEmpty();
        }
    }

    @Test
    void an_end_that_is_still_to_come_has_not_happened() {
        Job later =
                TestJobs.job(
                        "J-1", TestJobs.VIN, TestJobs.at("2026-04-01T10:00"), Outcome.COMPLETED);

        assertThat(judge(later, "2026-03-25T00:00").found()).hasSize(1);
    }

    private Findings judge(Job job, String asOf) {
        Findings findings = new Findings();
        rule.judge(new JudgedJob(TestSites.NORTH, job, TestJobs.at(asOf)), findings);
        return findings;
    }
}
