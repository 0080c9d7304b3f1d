package counterbench.procedure.rules;

import counterbench.campaign.Limits;
import counterbench.campaign.Step;
import counterbench.procedure.Mark;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A value that was read for a step, and the scale it was read on: the mark's unit, or where the
 * mark names none, the step's.
 */
record Reading(BigDecimal value, Scale scale) {
    /** The reading of a mark; empty where it bears no value. */
    static Optional<Reading> of(Step step, Mark mark) {
        String unit = mark.unit() == null ? step.unit() : mark.unit();
        return Optional.ofNullable(mark.value()).map(v -> new Reading(v, Scale.of(unit)));
    }

    /** Whether it lies within limits on a scale; one that does not compare with it never does. */
    boolean isWithin(Limits limits, Scale limitScale) {
        return scale.comparesWith(limitScale) && onBase(limits, limitScale).admit(base());
    }

    /** The value in the base unit. */
    BigDecimal base() {
        return scale.value(value);
    }

    /** How far it is from the nearest of the limits, in the base unit; empty if there is none. */
    Optional<BigDecimal> room(Limits limits, Scale limitScale) {
        Limits base = onBase(limits, limitScale);
        return Stream.of(base.low(), base.high())
                .filter(Objects::nonNull)
                .map(limit -> limit.subtract(base()).abs())
                .min(BigDecimal::compareTo);
    }

    private static Limits onBase(Limits limits, Scale scale) {
        return new Limits(onBase(limits.low(), scale), onBase(limits.high(), scale));
    }

    private static @Nullable BigDecimal onBase(@Nullable BigDecimal limit, Scale scale) {
        return limit == null ? null : scale.value(limit);
    }

    @Override
    public String toString() {
        return Words.number(value) + Words.unit(scale.toString());
    }
}
