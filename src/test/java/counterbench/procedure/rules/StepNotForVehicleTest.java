package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Judge;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StepNotForVehicleTest {
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private final StepNotForVehicle rule = new StepNotForVehicle();

    @Test
    void a_mark_on_a_step_for_other_vehicles_is_found_once() {
        ProcedureCase job = sensor().read("open", "3").read("open", "3");

        assertThat(job.vehicle("transmission", "manual").steps(rule)).containsExactly("open");
        assertThat(job.evidence(rule)).containsExactly("only where transmission is automatic");
    }

    @Test
    void a_mark_on_a_step_for_this_vehicle_is_in_order() {
        assertThat(sensor().read("open", "3").vehicle("transmission", "automatic").findings(rule))
                .isEmpty();
    }

    @Test
    void no_mark_is_in_order() {
        assertThat(sensor().vehicle("transmission", "manual").findings(rule)).isEmpty();
    }

    @Test
    void where_it_cannot_be_told_no_rule_judges_the_step_whatever_was_done() {
        ProcedureCase job = sensor().with("gone").read("open", "99");

        for (Judge<ProcedureFacts> judge : ProcedureRules.ALL) {
            assertThat(job.findings(judge)).isEmpty();
        }
    }

    @Test
    void a_step_for_other_vehicles_gets_this_finding_and_nothing_else() {
        ProcedureCase job =
                sensor().with("gone").read("open", "99").vehicle("transmission", "manual");

        assertThat(ProcedureRules.ALL)
                .filteredOn(judge -> !job.findings(judge).isEmpty())
                .extracting(judge -> judge.rule().word())
                .containsExactly("step-not-for-vehicle");
    }

    @Test
    void only_completed_jobs_are_judged() {
        ProcedureCase job = sensor().read("open", "3").vehicle("transmission", "manual");

        assertThat(job.on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static ProcedureCase sensor() {
        return new ProcedureCase(StepDraft.reading("open", "2.8", null, "V").when(AUTOMATIC));
    }
}
