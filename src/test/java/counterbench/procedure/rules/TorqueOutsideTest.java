package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TorqueOutsideTest {
    private final TorqueOutside rule = new TorqueOutside();

    @ParameterizedTest
    @CsvSource({
        "36.899, true",
        "36.9, false",
        "36.90, false",
        "41, false",
        "45.1, false",
        "45.101, true",
    })
    void both_limits_are_inside(String value, boolean outside) {
        assertThat(clamp().read("clamp", value).findings(rule)).hasSize(outside ? 1 : 0);
    }

    // NIST SP 811, Appendix B.8: 1 lbf·ft is 1.355 818 N·m. So 27.2 lbf·ft is 36.878 N·m and
    // 27.3 lbf·ft is 37.014 N·m; 33.2 lbf·ft is 45.013 N·m and 33.3 lbf·ft is 45.149 N·m.
    @ParameterizedTest
    @CsvSource({
        "27.2, lbf·ft, true",
        "27.3, ft-lb, false",
        "33.2, lb-ft, false",
        "33.3, lbf·ft, true",
        "41, Nm, false",
        "400, kgf·cm, false",
        "460, kgf·cm, true",
    })
    void a_reading_in_another_unit_is_converted(String value, String unit, boolean outside) {
        assertThat(clamp().read("clamp", value, unit).findings(rule)).hasSize(outside ? 1 : 0);
    }

    // By definition 12 lbf·in is 1 lbf·ft.
    @ParameterizedTest
    @CsvSource({"360, false", "359.999, true"})
    void conversion_is_exact_on_the_limit(String inchPounds, boolean outside) {
        ProcedureCase job =
                new ProcedureCase(StepDraft.torque("cap", 1, "30", "31", "32", "lbf·ft"));

        assertThat(job.read("cap", inchPounds, "lbf·in").findings(rule)).hasSize(outside ? 1 : 0);
    }

    @Test
    void a_reading_that_is_no_torque_is_never_inside() {
        assertThat(clamp().read("clamp", "41", "kPa").evidence(rule))
                .containsExactly("fastener 1 read 41 kPa, wanted 36.9 to 45.1 N·m");
    }

    @Test
    void the_latest_reading_of_each_fastener_counts() {
        ProcedureCase putRight = clamp().read("clamp", "30").at("2026-03-05T08:31");
        ProcedureCase madeWorse = clamp().read("clamp", "41").at("2026-03-05T08:31");

        assertThat(putRight.read("clamp", "41").findings(rule)).isEmpty();
        assertThat(madeWorse.read("clamp", "30").findings(rule)).hasSize(1);
    }

    @Test
    void at_one_time_the_later_row_counts() {
        assertThat(clamp().read("clamp", "30").read("clamp", "41").findings(rule)).isEmpty();
        assertThat(clamp().read("clamp", "41").read("clamp", "30").findings(rule)).hasSize(1);
    }

    @Test
    void one_finding_names_every_fastener_that_is_outside() {
        ProcedureCase job =
                clamp().fastener("clamp", 4, "50")
                        .fastener("clamp", 2, "30.0")
                        .fastener("clamp", 1, "41");

        assertThat(job.evidence(rule))
                .containsExactly(
                        "fastener 2 read 30 N·m, wanted 36.9 to 45.1 N·m; "
                                + "fastener 4 read 50 N·m, wanted 36.9 to 45.1 N·m");
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(clamp().read("clamp", "1").on(TestJobs.abandoned()).findings(rule)).isEmpty();
    }

    private static ProcedureCase clamp() {
        return new ProcedureCase(StepDraft.torque("clamp", 4, "36.9", "41", "45.1", "N·m"));
    }
}
