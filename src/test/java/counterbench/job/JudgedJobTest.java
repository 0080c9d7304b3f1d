package counterbench.job;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.shared.TestSites;
import java.time.Instant;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

class JudgedJobTest {
    private static final Job JOB =
            TestJobs.job("J-118", TestJobs.VIN, TestJobs.COMPLETED, Outcome.COMPLETED);

    @Test
    void a_job_is_completed_from_the_instant_of_its_completion() {
        assertThat(asOf(TestJobs.COMPLETED).isCompleted()).isTrue();
        assertThat(asOf(TestJobs.COMPLETED).isOpen()).isFalse();
    }

    @Test
    void before_its_completion_a_job_is_open_and_has_no_month() {
        JudgedJob before = asOf(TestJobs.COMPLETED.minusNanos(1000));

        assertThat(before.isCompleted()).isFalse();
        assertThat(before.isOpen()).isTrue();
        assertThat(before.until()).isEqualTo(before.asOf());
        assertThat(before.finding(Rule.JOB_IDLE, "", "").month()).isNull();
    }

    @Test
    void a_job_that_ended_otherwise_is_neither_open_nor_completed() {
        assertThat(TestJobs.abandoned().isAbandoned()).isTrue();
        assertThat(TestJobs.abandoned().isOpen()).isFalse();
        assertThat(TestJobs.notNeeded().isOpen()).isFalse();
        assertThat(TestJobs.notNeeded().isCompleted()).isFalse();
    }

    @Test
    void an_abandoned_job_without_a_time_counts_as_abandoned_in_no_month() {
        JudgedJob judged =
                TestJobs.judged(TestJobs.job("J-1", TestJobs.VIN, null, Outcome.ABANDONED));

        assertThat(judged.isAbandoned()).isTrue();
        assertThat(judged.finding(Rule.LEFT_ON_BENCH, "", "").month()).isNull();
    }

    @Test
    void the_month_is_that_of_the_completion_at_the_site() {
        Instant lastMinute = TestJobs.at("2026-03-31T23:59");
        Job job = TestJobs.job("J-1", TestJobs.VIN, lastMinute, Outcome.COMPLETED);

        Finding finding =
                new JudgedJob(TestSites.NORTH, job, lastMinute)
                        .finding(Rule.VIN_INVALID, "odd", "odd");

        assertThat(finding.month()).isEqualTo(YearMonth.of(2026, 3));
    }

    @Test
    void findings_name_site_campaign_job_part_and_step() {
        JudgedJob judged = TestJobs.completed();

        assertThat(judged.findingOnStep(Rule.STEP_MISSING, "purge", "no mark", "no mark"))
                .isEqualTo(
                        new Finding(
                                Rule.STEP_MISSING,
                                "NORTH",
                                "QM-26-014",
                                Subject.ofStep("J-118", "purge"),
                                YearMonth.of(2026, 3),
                                "job J-118: no mark",
                                "no mark"));
        assertThat(judged.findingOnPart(Rule.HARDWARE_OVER, "QM-1", "", "").subject().part())
                .isEqualTo("QM-1");
    }

    private static JudgedJob asOf(Instant asOf) {
        return new JudgedJob(TestSites.NORTH, JOB, asOf);
    }
}
