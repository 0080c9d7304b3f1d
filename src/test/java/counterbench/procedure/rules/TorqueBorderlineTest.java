package counterbench.procedure.rules;

import static counterbench.procedure.rules.ProcedureCase.calibration;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import counterbench.procedure.Calibration;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The wrench of these tests is uncertain by 4 %, what ISO 6789:2003 permits an adjustable graduated
 * torque tool of type II class A whose maximum is above 10 N·m.
 */
class TorqueBorderlineTest {
    private final TorqueBorderline rule = new TorqueBorderline();

    // 4 % of 25 N·m is 1 N·m: at 25 N·m the limit of 24 N·m is just as near as the wrench is
    // certain. At 24.9 N·m it is 0.996 N·m, and the limit only 0.9 N·m away.
    @ParameterizedTest
    @CsvSource({
        "23.9, false",
        "24, true",
        "24.9, true",
        "25, false",
        "27, false",
        "28.846, false",
        "28.847, true",
        "30, true",
        "30.1, false",
    })
    void inside_but_nearer_to_a_limit_than_the_wrench_is_certain(String value, boolean found) {
        assertThat(wrench("4", null).read("banjo", value).findings(rule)).hasSize(found ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({"24.499, true", "24.5, false", "29.5, false", "29.501, true"})
    void an_absolute_uncertainty_holds_as_it_is(String value, boolean found) {
        assertThat(wrench(null, "0.5").read("banjo", value).findings(rule)).hasSize(found ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({"4, 0.5, true", "1, 0.95, true", "1, 0.5, false"})
    void of_two_uncertainties_the_larger_holds(String percent, String amount, boolean found) {
        assertThat(wrench(percent, amount).read("banjo", "24.9").findings(rule))
                .hasSize(found ? 1 : 0);
    }

    // NIST SP 811, Appendix B.8: 1 lbf·ft is 1.355 818 N·m.
    @Test
    void an_absolute_uncertainty_is_in_the_unit_of_the_instrument() {
        ProcedureCase job = banjo().known("TW-1", "lbf·ft", lastYear(null, "1")).with("TW-1");

        assertThat(job.read("banjo", "25.35").evidence(rule))
                .containsExactly(
                        "fastener 1 read 25.35 N·m, nearer to a limit (24 to 30 N·m) than"
                                + " instrument TW-1 is certain (1 lbf·ft)");
        assertThat(job.read("banjo", "25.36").findings(rule)).isEmpty();
    }

    @Test
    void an_uncertainty_that_is_no_torque_says_nothing() {
        ProcedureCase job = banjo().known("M-1", "V", lastYear(null, "9")).with("M-1");

        assertThat(job.read("banjo", "24").findings(rule)).isEmpty();
    }

    @Test
    void a_reading_outside_is_outside_and_not_borderline() {
        assertThat(wrench("50", null).read("banjo", "23.999").findings(rule)).isEmpty();
    }

    @Test
    void an_unknown_instrument_or_none_or_one_never_calibrated_has_no_uncertainty() {
        assertThat(banjo().read("banjo", "24").findings(rule)).isEmpty();
        assertThat(banjo().with("gone").read("banjo", "24").findings(rule)).isEmpty();
        assertThat(banjo().known("TW-1", "N·m").with("TW-1").read("banjo", "24").findings(rule))
                .isEmpty();
        assertThat(wrench(null, null).read("banjo", "24").findings(rule)).isEmpty();
    }

    @Test
    void the_last_calibration_not_after_the_day_of_use_counts() {
        ProcedureCase job =
                banjo().known(
                                "TW-1",
                                "N·m",
                                calibration("2025-01-10", "2026-01-10", "1", null),
                                calibration("2026-03-06", "2027-03-06", "1", null),
                                calibration("2026-03-05", "2027-03-05", "4", null))
                        .with("TW-1");

        assertThat(job.at("2026-03-05T00:00").read("banjo", "24.9").findings(rule)).hasSize(1);
        assertThat(job.at("2026-03-06T00:00").read("banjo", "24.9").findings(rule)).isEmpty();
    }

    @Test
    void the_latest_reading_of_each_fastener_counts() {
        ProcedureCase job = wrench("4", null).read("banjo", "24.1").at("2026-03-05T08:31");

        assertThat(job.read("banjo", "27").findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(wrench("4", null).read("banjo", "24").on(TestJobs.open()).findings(rule))
                .isEmpty();
    }

    private static ProcedureCase banjo() {
        return new ProcedureCase(StepDraft.torque("banjo", 1, "24", "27", "30", "N·m"));
    }

    private static ProcedureCase wrench(@Nullable String percent, @Nullable String amount) {
        return banjo().known("TW-1", "N·m", lastYear(percent, amount)).with("TW-1");
    }

    private static Calibration lastYear(@Nullable String percent, @Nullable String amount) {
        return calibration("2025-06-01", "2026-06-01", percent, amount);
    }
}
