package counterbench.campaign;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of the procedure.
 *
 * @param id its name within the pack
 * @param what what to do, in the pack's words
 * @param kind what is recorded for it
 * @param after steps that must be complete first
 * @param fasteners how many fasteners a torque step has; 1 otherwise
 * @param unit the unit that the limits are stated in, for torque and reading steps
 * @param target the stated torque, for torque steps
 * @param limits for torque and reading steps; with {@code riseFrom}, limits of the difference
 * @param riseFrom the step from whose latest reading the difference is taken
 * @param minutes the least length of a wait
 * @param also the values stated in a second unit, for show
 * @param when for which vehicles
 */
public record Step(
        String id,
        String what,
        StepKind kind,
        List<String> after,
        int fasteners,
        @Nullable String unit,
        @Nullable BigDecimal target,
        Limits limits,
        @Nullable String riseFrom,
        @Nullable BigDecimal minutes,
        @Nullable String also,
        Condition when) {
    public Step {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(kind, "kind");
        after = List.copyOf(after);
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(when, "when");
    }
}
