package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import counterbench.stock.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KitOfAnotherJobTest {
    private final KitOfAnotherJob rule = new KitOfAnotherJob();

    @ParameterizedTest
    @EnumSource(Use.Condition.class)
    void every_use_that_names_a_kit_not_issued_here_is_found(Use.Condition condition) {
        HardwareCase job = campaign().use("QM-4471", "1", condition, "K-2", null, null);

        assertThat(job.parts(rule)).containsExactly("QM-4471");
        assertThat(job.findings(rule).get(0).evidence()).isEqualTo("not issued to the job: K-2");
    }

    @Test
    void a_kit_issued_to_the_job_is_in_order() {
        assertThat(campaign().fittedFrom("K-1", "QM-4471").findings(rule)).isEmpty();
    }

    @Test
    void a_kit_issued_after_the_use_is_in_order_too() {
        HardwareCase job =
                campaign().fittedFrom("K-2", "QM-4471").at("2026-03-05T16:00").issued("K-2");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void a_kit_that_never_came_is_another_rules_business() {
        assertThat(campaign().fittedFrom("K-9", "QM-4471").findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        HardwareCase job = campaign().fittedFrom("K-2", "QM-4471");

        assertThat(job.on(TestJobs.notNeeded()).findings(rule)).isEmpty();
    }

    private static HardwareCase campaign() {
        return new HardwareCase(new PackDraft().kit("K", LineDraft.pieces("QM-4471", 1)))
                .received("K-1", null)
                .received("K-2", null)
                .issued("K-1");
    }
}
