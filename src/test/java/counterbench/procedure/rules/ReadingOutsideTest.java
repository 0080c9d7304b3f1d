package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingOutsideTest {
    private final ReadingOutside rule = new ReadingOutside();

    // 750 ± 50 rpm: common practice, no source.
    @ParameterizedTest
    @CsvSource({"699, true", "700, false", "750, false", "800, false", "801, true"})
    void idle_speed_may_lie_on_its_limits(String rpm, boolean outside) {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("idle", "700", "800", "rpm"));

        assertThat(job.read("idle", rpm).findings(rule)).hasSize(outside ? 1 : 0);
    }

    // 1.00 ± 0.05 V with the lever closed: common practice, no source.
    @ParameterizedTest
    @CsvSource({"0.949, true", "0.95, false", "1.00, false", "1.05, false", "1.051, true"})
    void sensor_voltage_may_lie_on_its_limits(String volts, boolean outside) {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("closed", "0.95", "1.05", "V"));

        assertThat(job.read("closed", volts).findings(rule)).hasSize(outside ? 1 : 0);
    }

    // At least 2.25 V more with the lever open: common practice, no source.
    @ParameterizedTest
    @CsvSource({
        "1.00, 3.25, false",
        "1.00, 3.24, true",
        "1.02, 3.26, true",
        "0.95, 3.20, false",
        "1.00, 9.99, false",
    })
    void a_rise_is_judged_by_the_difference(String closed, String open, boolean outside) {
        ProcedureCase job = sensor().read("closed", closed).read("open", open);

        assertThat(job.findings(rule)).hasSize(outside ? 1 : 0);
    }

    @Test
    void the_finding_names_both_readings_and_the_wanted_rise() {
        assertThat(sensor().read("closed", "1.00").read("open", "3.2").evidence(rule))
                .containsExactly(
                        "read 3.2 V after 1 V at step closed, wanted a rise of at least 2.25 V");
    }

    @Test
    void a_rise_needs_both_readings() {
        assertThat(sensor().read("open", "1").findings(rule)).isEmpty();
        assertThat(sensor().read("closed", "1").findings(rule)).isEmpty();
    }

    @Test
    void a_rise_is_between_the_latest_readings_of_both() {
        ProcedureCase job =
                sensor().read("closed", "1.05")
                        .read("open", "3.2")
                        .at("2026-03-05T09:00")
                        .read("closed", "0.95");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void the_latest_reading_counts_by_time_then_by_row() {
        ProcedureCase idle = new ProcedureCase(StepDraft.reading("idle", "700", "800", "rpm"));

        assertThat(idle.read("idle", "900").read("idle", "750").findings(rule)).isEmpty();
        assertThat(idle.at("2026-03-05T09:00").read("idle", "690").evidence(rule))
                .containsExactly("read 690 rpm, wanted 700 to 800 rpm");
        assertThat(idle.at("2026-03-05T08:00").read("idle", "750").findings(rule)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"80, °C, false", "175, °F, true", "176, °F, false", "79.99, °C, true"})
    void temperatures_convert_exactly(String value, String unit, boolean outside) {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("warm", "80", null, "°C"));

        assertThat(job.read("warm", value, unit).findings(rule)).hasSize(outside ? 1 : 0);
    }

    // A rise of 10 °C is one of 18 °F: NIST SP 811, Appendix B.8, t/°C = (t/°F − 32)/1.8.
    @ParameterizedTest
    @CsvSource({"68, 86, false", "68, 85.99, true"})
    void a_rise_in_temperature_knows_no_zero_point(String from, String to, boolean outside) {
        ProcedureCase job =
                new ProcedureCase(
                                StepDraft.reading("before", null, null, "°C"),
                                StepDraft.reading("after", "10", null, "°C").riseFrom("before"))
                        .read("before", from, "°F")
                        .read("after", to, "°F");

        assertThat(job.findings(rule)).hasSize(outside ? 1 : 0);
    }

    @Test
    void a_unit_that_nobody_knows_compares_with_itself_only() {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("gap", "2", "4", "notches"));

        assertThat(job.read("gap", "3").findings(rule)).isEmpty();
        assertThat(job.read("gap", "3", "notches").findings(rule)).isEmpty();
        assertThat(job.read("gap", "3", "turns").findings(rule)).hasSize(1);
    }

    @Test
    void a_reading_may_be_limited_on_one_side_only() {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("leak", null, "5", "kPa"));

        assertThat(job.read("leak", "-3").findings(rule)).isEmpty();
        assertThat(job.read("leak", "5.1").evidence(rule))
                .containsExactly("read 5.1 kPa, wanted at most 5 kPa");
    }

    @Test
    void a_step_that_does_not_surely_apply_is_not_judged() {
        Condition automatic = new Condition(Map.of("transmission", "automatic"));
        ProcedureCase job =
                new ProcedureCase(StepDraft.reading("open", "2.8", null, "V").when(automatic))
                        .read("open", "1");

        assertThat(job.findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "automatic").findings(rule)).hasSize(1);
    }

    @Test
    void only_completed_jobs_are_judged() {
        ProcedureCase job = new ProcedureCase(StepDraft.reading("idle", "700", "800", "rpm"));

        assertThat(job.read("idle", "1").on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static ProcedureCase sensor() {
        return new ProcedureCase(
                StepDraft.reading("closed", "0.95", "1.05", "V"),
                StepDraft.reading("open", "2.25", null, "V").riseFrom("closed"));
    }
}
