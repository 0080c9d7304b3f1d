package counterbench.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Limits in the unit of the instrument. The factors are those of NIST SP 811, Appendix B.8, held by
 * the tests of the units.
 */
class LimitsInInstrumentUnitTest {
    private static final Unit LBF_FT = Units.of("lbf·ft");

    private static Step step(@Nullable String low, @Nullable String high, String unit) {
        return new Step(
                "mount",
                "Tighten",
                StepKind.TORQUE,
                List.of(),
                1,
                unit,
                null,
                new Limits(
                        low == null ? null : new BigDecimal(low),
                        high == null ? null : new BigDecimal(high)),
                null,
                null,
                null,
                Condition.ALWAYS);
    }

    @Test
    void limits_are_rounded_to_the_inside_so_that_what_looks_good_is_good() {
        Step step = step("43.24", "50.76", "N·m");

        assertThat(StepText.limits(step, LBF_FT))
                .contains("31.9 to 37.43 lbf·ft (43.24 to 50.76 N·m)");
        assertThat(
                        Units.compare(
                                new BigDecimal("31.9"),
                                LBF_FT,
                                new BigDecimal("43.24"),
                                Units.of("N·m")))
                .isPositive();
        assertThat(
                        Units.compare(
                                new BigDecimal("37.43"),
                                LBF_FT,
                                new BigDecimal("50.76"),
                                Units.of("N·m")))
                .isNegative();
    }

    @Test
    void one_limit_alone_is_said_as_such() {
        assertThat(StepText.limits(step("43.24", null, "N·m"), LBF_FT))
                .contains("at least 31.9 lbf·ft (at least 43.24 N·m)");
        assertThat(StepText.limits(step(null, null, "N·m"), LBF_FT)).isEmpty();
    }

    @Test
    void an_instrument_of_the_same_or_another_kind_of_unit_changes_nothing() {
        Step step = step("43.24", "50.76", "N·m");

        assertThat(StepText.limits(step, Units.of("Nm"))).isEqualTo(StepText.limits(step));
        assertThat(StepText.limits(step, Units.of("kPa"))).isEqualTo(StepText.limits(step));
    }
}
