package counterbench.month.sheet;

import counterbench.campaign.Limits;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Between what a marked value must lie, in the unit of the value, to be read beside it. */
final class MarkLimits {
    private static final int DIGITS = 6;

    private static final Limits NONE = new Limits(null, null);

    private MarkLimits() {}

    /**
     * The limits of a step; none where a rise counts, which no single value shows, or where the
     * units do not compare.
     *
     * @param unit the unit of the value; null where it is the step's
     */
    static Limits of(Step step, @Nullable String unit) {
        if (step.kind() == StepKind.WAIT) {
            return new Limits(step.minutes(), null);
        }
        if (step.riseFrom() != null) {
            return NONE;
        }
        return unit == null || unit.equals(step.unit())
                ? step.limits()
                : converted(step, unit).orElse(NONE);
    }

    private static Optional<Limits> converted(Step step, String unit) {
        Optional<Unit> from = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        Optional<Unit> to = Units.parse(unit);
        return from.isPresent() && to.isPresent() && from.get().comparesWith(to.get())
                ? Optional.of(
                        new Limits(
                                converted(step.limits().low(), from.get(), to.get()),
                                converted(step.limits().high(), from.get(), to.get())))
                : Optional.empty();
    }

    private static @Nullable BigDecimal converted(@Nullable BigDecimal limit, Unit from, Unit to) {
        return limit == null ? null : from.convert(limit, to, DIGITS);
    }
}
