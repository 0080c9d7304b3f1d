package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

class LeftOnBenchTest {
    private final LeftOnBench rule = new LeftOnBench();

    @Test
    void what_is_still_on_the_bench_of_a_completed_job_is_found_part_by_part() {
        HardwareCase job = campaign().onBench("QM-4473", "1").onBench("QM-4402", "2");

        assertThat(job.parts(rule)).containsExactly("QM-4402", "QM-4473");
        assertThat(job.findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("left 2", "left 1");
    }

    @Test
    void more_used_than_issued_is_found_and_said_so() {
        Finding finding = campaign().onBench("QM-4473", "-1").findings(rule).get(0);

        assertThat(finding.message()).contains("1 of QM-4473 used beyond what was issued");
        assertThat(finding.evidence()).isEqualTo("left -1");
    }

    @Test
    void an_empty_bench_is_in_order() {
        assertThat(campaign().onBench("QM-4473", "0").findings(rule)).isEmpty();
        assertThat(campaign().findings(rule)).isEmpty();
    }

    @Test
    void the_smallest_amount_counts() {
        assertThat(campaign().onBench("QM-4473", "0.001").findings(rule)).hasSize(1);
    }

    @Test
    void abandoned_jobs_are_judged_too_open_and_not_needed_ones_are_not() {
        HardwareCase job = campaign().onBench("QM-4473", "1");

        assertThat(job.on(TestJobs.abandoned()).findings(rule)).hasSize(1);
        assertThat(job.on(TestJobs.open()).findings(rule)).isEmpty();
        assertThat(job.on(TestJobs.notNeeded()).findings(rule)).isEmpty();
    }

    private static HardwareCase campaign() {
        return new HardwareCase(
                new PackDraft().kit("K", LineDraft.pieces("QM-4473", 4).singleUse()));
    }
}
