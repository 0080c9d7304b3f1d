package counterbench.shared.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What something weighs on a scale, as it was read: exact, in kilograms or pounds (NIST SP 811,
 * appendix B.8: 1 lb is 0.453 592 37 kg exactly).
 *
 * @param amount above zero
 * @param unit {@code kg} or {@code lb}
 */
public record Weight(BigDecimal amount, Unit unit) {
    private static final int MOST_WRITTEN = 6;
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,6})?)\\s*(kg|lb)");

    public Weight {
        Objects.requireNonNull(unit, "unit");
        if (amount.signum() <= 0 || unit.measures() != Measure.MASS) {
            throw new IllegalArgumentException(amount + " " + unit + " is no weight");
        }
    }

    /** As somebody writes it, such as {@code 16.2 kg}; empty if it is none. */
    public static Optional<Weight> parse(String text) {
        Matcher written = WRITTEN.matcher(text.strip());
        return written.matches()
                ? of(new BigDecimal(written.group(1)), written.group(2))
                : Optional.empty();
    }

    /** As two cells say it; empty where one of them says nothing, or it is no weight. */
    public static Optional<Weight> of(@Nullable BigDecimal amount, @Nullable String unit) {
        return amount == null || unit == null || amount.signum() <= 0
                ? Optional.empty()
                : Optional.of(new Weight(amount, Units.of(unit)));
    }

    /** The sum, in the unit in which all are given, else in kilograms; exact. Empty of nothing. */
    public static Optional<Weight> sum(Collection<Weight> weights) {
        return weights.stream().reduce(Weight::plus);
    }

    private Weight plus(Weight other) {
        return unit.equals(other.unit)
                ? new Weight(amount.add(other.amount), unit)
                : new Weight(kilograms().add(other.kilograms()), Units.of("kg"));
    }

    /** In kilograms, exact. */
    public BigDecimal kilograms() {
        return unit.toBase(amount).movePointLeft(3);
    }

    /** Whether it is more than another. */
    public boolean exceeds(Weight other) {
        return Units.compare(amount, unit, other.amount, other.unit) > 0;
    }

    /**
     * The amount as it is shown: what pounds make in kilograms has nine decimals, and gets three.
     */
    public BigDecimal shown() {
        BigDecimal rounded =
                amount.scale() > MOST_WRITTEN ? amount.setScale(3, RoundingMode.HALF_EVEN) : amount;
        BigDecimal plain = rounded.stripTrailingZeros();
        return plain.setScale(Math.max(0, plain.scale()));
    }

    @Override
    public String toString() {
        return shown().toPlainString() + " " + unit;
    }
}
