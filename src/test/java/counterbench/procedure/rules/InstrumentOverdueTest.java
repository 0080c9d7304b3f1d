package counterbench.procedure.rules;

import static counterbench.procedure.rules.ProcedureCase.calibration;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstrumentOverdueTest {
    private final InstrumentOverdue rule = new InstrumentOverdue();

    @ParameterizedTest
    @CsvSource({
        "2025-02-28T23:59, true",
        "2025-03-01T00:00, false",
        "2026-03-01T23:59, false",
        "2026-03-02T00:00, true",
        "2026-03-03T23:59, true",
        "2026-03-04T00:00, false",
    })
    void an_instrument_is_good_from_its_calibration_to_the_end_of_the_day_it_falls_due(
            String used, boolean found) {
        ProcedureCase job =
                banjo().known(
                                "TW-1",
                                "N·m",
                                calibration("2026-03-04", "2027-03-04", null, null),
                                calibration("2025-03-01", "2026-03-01", null, null))
                        .with("TW-1")
                        .at(used)
                        .read("banjo", "27");

        assertThat(job.findings(rule)).hasSize(found ? 1 : 0);
    }

    @Test
    void an_unknown_instrument_is_found() {
        assertThat(banjo().with("gone").read("banjo", "27").evidence(rule))
                .containsExactly("instrument gone is unknown");
    }

    @Test
    void an_instrument_never_calibrated_is_found() {
        assertThat(banjo().known("TW-1", "N·m").with("TW-1").read("banjo", "27").evidence(rule))
                .containsExactly("instrument TW-1 was not yet calibrated on 2026-03-05");
    }

    @Test
    void a_later_calibration_with_an_earlier_due_day_takes_over() {
        ProcedureCase job =
                banjo().known(
                                "TW-1",
                                "N·m",
                                calibration("2025-06-01", "2026-06-01", null, null),
                                calibration("2026-02-01", "2026-03-01", null, null))
                        .with("TW-1")
                        .read("banjo", "27");

        assertThat(job.evidence(rule))
                .containsExactly("instrument TW-1 was due on 2026-03-01, used on 2026-03-05");
    }

    @Test
    void every_mark_is_judged_in_one_finding_for_the_step() {
        ProcedureCase job =
                banjo().with("gone")
                        .read("banjo", "27")
                        .with("lost")
                        .read("banjo", "27")
                        .with("gone")
                        .read("banjo", "27");

        assertThat(job.evidence(rule))
                .containsExactly("instrument gone is unknown; instrument lost is unknown");
        assertThat(job.steps(rule)).containsExactly("banjo");
    }

    @Test
    void a_mark_that_names_no_instrument_is_in_order() {
        assertThat(banjo().read("banjo", "27").findings(rule)).isEmpty();
    }

    @Test
    void any_kind_of_step_and_a_step_of_another_revision_is_judged() {
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("cold")).with("gone").mark("cold").mark("old");

        assertThat(job.steps(rule)).containsExactly("cold", "old");
    }

    @Test
    void a_step_that_does_not_surely_apply_is_not_judged() {
        Condition automatic = new Condition(Map.of("transmission", "automatic"));
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("open").when(automatic)).with("gone").mark("open");

        assertThat(job.findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "manual").findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "automatic").findings(rule)).hasSize(1);
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(banjo().with("gone").read("banjo", "27").on(TestJobs.open()).findings(rule))
                .isEmpty();
    }

    private static ProcedureCase banjo() {
        return new ProcedureCase(StepDraft.torque("banjo", 1, "24", "27", "30", "N·m"));
    }
}
