package counterbench.campaign;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Builds steps for tests. */
public final class StepDraft {
    private final String id;
    private final StepKind kind;
    private final @Nullable String unit;
    private List<String> after = List.of();
    private int fasteners = 1;
    private @Nullable BigDecimal target;
    private Limits limits = new Limits(null, null);
    private @Nullable String riseFrom;
    private @Nullable BigDecimal minutes;
    private Condition when = Condition.ALWAYS;

    private StepDraft(String id, StepKind kind, @Nullable String unit) {
        this.id = id;
        this.kind = kind;
        this.unit = unit;
    }

    public static StepDraft sign(String id) {
        return new StepDraft(id, StepKind.SIGN, null);
    }

    public static StepDraft torque(
            String id, int fasteners, String low, String target, String high, String unit) {
        StepDraft step = new StepDraft(id, StepKind.TORQUE, unit).limits(low, high);
        step.fasteners = fasteners;
        step.target = new BigDecimal(target);
        return step;
    }

    public static StepDraft reading(
            String id, @Nullable String low, @Nullable String high, String unit) {
        return new StepDraft(id, StepKind.READING, unit).limits(low, high);
    }

    public static StepDraft pause(String id, String minutes) {
        StepDraft step = new StepDraft(id, StepKind.WAIT, null);
        step.minutes = new BigDecimal(minutes);
        return step;
    }

    public StepDraft after(String... steps) {
        after = List.of(steps);
        return this;
    }

    public StepDraft riseFrom(String step) {
        riseFrom = step;
        return this;
    }

    public StepDraft when(Condition condition) {
        when = condition;
        return this;
    }

    public Step step() {
        return new Step(
                id,
                "Do " + id,
                kind,
                after,
                fasteners,
                unit,
                target,
                limits,
                riseFrom,
                minutes,
                null,
                when);
    }

    private StepDraft limits(@Nullable String low, @Nullable String high) {
        limits =
                new Limits(
                        low == null ? null : new BigDecimal(low),
                        high == null ? null : new BigDecimal(high));
        return this;
    }
}
