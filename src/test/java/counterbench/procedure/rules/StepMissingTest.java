package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.judgement.Subject;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StepMissingTest {
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private final StepMissing rule = new StepMissing();

    @Test
    void each_step_without_a_mark_is_found() {
        ProcedureCase job =
                new ProcedureCase(
                        StepDraft.sign("cold"),
                        StepDraft.torque("clamp", 4, "36.9", "41", "45.1", "N·m"),
                        StepDraft.pause("purge", "0.5"));

        assertThat(job.mark("cold").steps(rule)).containsExactly("clamp", "purge");
    }

    @Test
    void the_finding_names_job_step_and_what_to_do() {
        Finding finding = new ProcedureCase(StepDraft.sign("cold")).findings(rule).get(0);

        assertThat(finding.subject()).isEqualTo(Subject.ofStep("J-118", "cold"));
        assertThat(finding.message())
                .isEqualTo("job J-118: step cold: no mark says that it was done: Do cold");
        assertThat(finding.evidence()).isEqualTo("no mark");
    }

    @Test
    void one_mark_is_enough() {
        ProcedureCase job =
                new ProcedureCase(StepDraft.torque("clamp", 4, "36.9", "41", "45.1", "N·m"));

        assertThat(job.fastener("clamp", 1, "41").findings(rule)).isEmpty();
    }

    @Test
    void only_a_step_that_surely_applies_can_be_missing() {
        ProcedureCase job = new ProcedureCase(StepDraft.sign("open").when(AUTOMATIC));

        assertThat(job.findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "manual").findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "automatic").steps(rule)).containsExactly("open");
    }

    @Test
    void only_completed_jobs_are_judged() {
        ProcedureCase job = new ProcedureCase(StepDraft.sign("cold"));

        assertThat(job.on(TestJobs.open()).findings(rule)).isEmpty();
        assertThat(job.on(TestJobs.abandoned()).findings(rule)).isEmpty();
        assertThat(job.on(TestJobs.notNeeded()).findings(rule)).isEmpty();
    }
}
