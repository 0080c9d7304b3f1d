package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import org.junit.jupiter.api.Test;

class TorqueCountTest {
    private final TorqueCount rule = new TorqueCount();

    @Test
    void fewer_fasteners_than_the_step_has_are_found() {
        ProcedureCase job =
                clamp().fastener("clamp", 1, "41")
                        .fastener("clamp", 2, "41")
                        .fastener("clamp", 3, "41");

        assertThat(job.evidence(rule)).containsExactly("3 of 4 fasteners read");
    }

    @Test
    void one_fastener_read_four_times_is_one() {
        ProcedureCase job = clamp();
        for (int i = 0; i < 4; i++) {
            job.fastener("clamp", 2, "41");
        }

        assertThat(job.evidence(rule)).containsExactly("1 of 4 fasteners read");
    }

    @Test
    void all_fasteners_in_any_order_are_enough() {
        ProcedureCase job = clamp();
        for (int fastener : new int[] {3, 1, 4, 2}) {
            job.fastener("clamp", fastener, "41");
        }

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void a_step_of_which_nothing_was_read_is_missing_and_not_miscounted() {
        assertThat(clamp().findings(rule)).isEmpty();
    }

    @Test
    void steps_without_fasteners_are_not_counted() {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("idle", "610", "670", "rpm"));

        assertThat(job.read("idle", "640").findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(clamp().fastener("clamp", 1, "41").on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static ProcedureCase clamp() {
        return new ProcedureCase(StepDraft.torque("clamp", 4, "36.9", "41", "45.1", "N·m"));
    }
}
