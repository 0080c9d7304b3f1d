package counterbench.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class StepTextTest {
    private static Step step(
            StepKind kind,
            int fasteners,
            @Nullable String unit,
            @Nullable String target,
            @Nullable String low,
            @Nullable String high,
            @Nullable String riseFrom,
            @Nullable String also) {
        return new Step(
                "a",
                "Do it",
                kind,
                List.of(),
                fasteners,
                unit,
                number(target),
                new Limits(number(low), number(high)),
                riseFrom,
                null,
                also,
                Condition.ALWAYS);
    }

    private static @Nullable BigDecimal number(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }

    /** 1 lbf·ft is 1.355 818 N·m (NIST SP 811 B.8), so 41 N·m are 30.24 lbf·ft. */
    @Test
    void a_torque_is_said_with_its_limits_in_both_units() {
        Step step = step(StepKind.TORQUE, 4, "N·m", "41", "36.9", "45.1", null, "30 lbf·ft");
        assertThat(StepText.asked(step))
                .isEqualTo(
                        "4 fasteners, 41 N·m (30.24 lbf·ft), 36.9 to 45.1 N·m (27.22 to 33.26"
                                + " lbf·ft), which the pack also states as 30 lbf·ft");
    }

    /** 1 lbf·in is 0.112 984 8 N·m (NIST SP 811 B.8), so 3 N·m are 26.55 lbf·in. */
    @Test
    void the_second_unit_is_the_packs_own_where_it_has_one() {
        Step step = step(StepKind.READING, 1, "N·m", null, "3", null, null, "low 26.6 lbf·in");
        assertThat(StepText.asked(step))
                .isEqualTo(
                        "at least 3 N·m (26.55 lbf·in), which the pack also states as low 26.6"
                                + " lbf·in");
    }

    /** t/°F = 1.8 t/°C + 32; of a difference only the factor counts (NIST SP 811 B.8). */
    @Test
    void a_temperature_is_converted_with_its_zero_and_a_rise_of_one_without() {
        assertThat(StepText.asked(step(StepKind.READING, 1, "°C", null, null, "85", null, null)))
                .isEqualTo("at most 85 °C (185 °F)");
        assertThat(StepText.asked(step(StepKind.READING, 1, "°C", null, "10", null, "cold", null)))
                .isEqualTo("at least 10 °C (18 °F), measured from step cold");
    }

    @Test
    void a_unit_without_another_stands_alone() {
        assertThat(StepText.asked(step(StepKind.READING, 1, "rpm", null, "610", "670", null, null)))
                .isEqualTo("610 to 670 rpm");
        assertThat(StepText.asked(step(StepKind.SIGN, 1, null, null, null, null, null, null)))
                .isEmpty();
    }
}
