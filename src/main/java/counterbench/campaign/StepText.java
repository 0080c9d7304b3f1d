package counterbench.campaign;

import counterbench.shared.Minutes;
import counterbench.shared.units.Stated;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a step asks, in words: torque and limits in the unit of the pack and, in brackets, in a
 * second one. The unit of the pack is the one that is judged by; the other is rounded, for reading
 * an instrument by.
 */
public final class StepText {
    private static final Map<String, String> OTHER_UNITS =
            Map.ofEntries(
                    Map.entry("N·m", "lbf·ft"),
                    Map.entry("lbf·ft", "N·m"),
                    Map.entry("lbf·in", "N·m"),
                    Map.entry("kgf·cm", "N·m"),
                    Map.entry("kPa", "psi"),
                    Map.entry("bar", "psi"),
                    Map.entry("psi", "bar"),
                    Map.entry("°C", "°F"),
                    Map.entry("°F", "°C"));
    private static final int LEAST_DIGITS = 4;
    private static final int EXACT_DIGITS = 34;
    private static final MathContext SHOWN = new MathContext(9);

    private StepText() {}

    /** What is asked beyond doing it; empty where nothing is. */
    public static String asked(Step step) {
        List<String> parts = new ArrayList<>();
        if (step.fasteners() > 1) {
            parts.add(step.fasteners() + " fasteners");
        }
        if (step.target() != null) {
            parts.add(inBoth(step, step.target()));
        }
        limits(step).ifPresent(parts::add);
        if (step.riseFrom() != null) {
            parts.add("measured from step " + step.riseFrom());
        }
        if (step.minutes() != null) {
            parts.add("at least " + Minutes.text(step.minutes()));
        }
        if (step.also() != null) {
            parts.add("which the pack also states as " + step.also());
        }
        return String.join(", ", parts);
    }

    /** Between what its reading must lie, in both units; empty where it has no limits. */
    public static Optional<String> limits(Step step) {
        BigDecimal low = step.limits().low();
        BigDecimal high = step.limits().high();
        if (low != null && high != null) {
            return Optional.of(range(step, low, high));
        }
        if (low != null) {
            return Optional.of("at least " + inBoth(step, low));
        }
        return Optional.ofNullable(high).map(h -> "at most " + inBoth(step, h));
    }

    /**
     * The same with the unit of an instrument first, in which the limits are rounded to the inside:
     * what lies within them as they are shown lies within them.
     */
    public static Optional<String> limits(Step step, Unit shown) {
        Optional<Unit> own = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        if (own.isEmpty() || own.get().equals(shown) || !own.get().comparesWith(shown)) {
            return limits(step);
        }
        BigDecimal low = step.limits().low();
        BigDecimal high = step.limits().high();
        String inShown =
                between(
                        low == null ? null : inside(step, low, shown, RoundingMode.CEILING),
                        high == null ? null : inside(step, high, shown, RoundingMode.FLOOR));
        String stated = between(low == null ? null : plain(low), high == null ? null : plain(high));
        return inShown.isEmpty()
                ? Optional.empty()
                : Optional.of(inShown + " " + shown + " (" + stated + " " + own.get() + ")");
    }

    private static String inside(Step step, BigDecimal value, Unit to, RoundingMode rounding) {
        int digits = Math.max(LEAST_DIGITS, value.stripTrailingZeros().precision());
        BigDecimal exact = unit(step, unitOf(step)).convert(value, unit(step, to), EXACT_DIGITS);
        return plain(exact.round(new MathContext(digits, rounding)));
    }

    private static String between(@Nullable String low, @Nullable String high) {
        if (low != null && high != null) {
            return low + " to " + high;
        }
        return low != null ? "at least " + low : high == null ? "" : "at most " + high;
    }

    private static String range(Step step, BigDecimal low, BigDecimal high) {
        String stated = plain(low) + " to " + plain(high) + " " + word(step);
        return other(step)
                .map(
                        unit ->
                                stated
                                        + " ("
                                        + converted(step, low, unit)
                                        + " to "
                                        + converted(step, high, unit)
                                        + " "
                                        + unit
                                        + ")")
                .orElse(stated);
    }

    private static String inBoth(Step step, BigDecimal value) {
        String stated = plain(value) + " " + word(step);
        return other(step)
                .map(unit -> stated + " (" + converted(step, value, unit) + " " + unit + ")")
                .orElse(stated);
    }

    private static String word(Step step) {
        return Objects.toString(step.unit(), "");
    }

    private static String converted(Step step, BigDecimal value, Unit to) {
        int digits = Math.max(LEAST_DIGITS, value.stripTrailingZeros().precision());
        return plain(unit(step, unitOf(step)).convert(value, unit(step, to), digits));
    }

    private static Unit unitOf(Step step) {
        return Units.of(word(step));
    }

    /** Of a rise the difference counts, without the zero of the scale. */
    private static Unit unit(Step step, Unit unit) {
        return step.riseFrom() == null ? unit : unit.ofDifferences();
    }

    /** The unit in which the pack repeats its values, or else the usual other one. */
    private static Optional<Unit> other(Step step) {
        Optional<Unit> own = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        return own.flatMap(
                u ->
                        repeated(step.also())
                                .filter(other -> other.comparesWith(u) && !other.equals(u))
                                .or(
                                        () ->
                                                Optional.ofNullable(OTHER_UNITS.get(u.symbol()))
                                                        .flatMap(Units::parse)));
    }

    private static Optional<Unit> repeated(@Nullable String also) {
        if (also == null) {
            return Optional.empty();
        }
        return Arrays.stream(also.split(","))
                .flatMap(text -> Stated.parse(text.replaceFirst("^ *(low|high)? *", "")).stream())
                .map(Stated::unit)
                .findFirst();
    }

    /** A limit that the pack states in another unit has many digits; nine are enough to read. */
    private static String plain(BigDecimal value) {
        BigDecimal bare = value.round(SHOWN).stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }
}
