package counterbench.shared.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value as somebody stated it, with its unit. It stands for the interval of half a unit in its
 * last stated digit: 28 for 27.5 to 28.5, 0.65 for 0.645 to 0.655.
 *
 * @param value the number with as many decimals as were stated
 * @param unit the unit that it was stated in
 */
public record Stated(BigDecimal value, Unit unit) {
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?\\d{1,9}(?:\\.\\d{1,9})?)\\s*([^\\s\\d.,].*)");
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final int LEAST_DIGITS = 3;

    public Stated {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
        value = value.setScale(Math.max(0, value.scale()), RoundingMode.UNNECESSARY);
    }

    /** Reads a plain decimal followed by a known unit, such as {@code 31 lbf·ft}. */
    public static Optional<Stated> parse(String text) {
        Matcher parts = NUMBER_AND_UNIT.matcher(text.strip());
        return parts.matches()
                ? Units.parse(parts.group(2))
                        .map(unit -> new Stated(new BigDecimal(parts.group(1)), unit))
                : Optional.empty();
    }

    /**
     * Whether the two can be roundings of one true value: their intervals overlap, ends included,
     * when compared exactly.
     *
     * @throws IllegalArgumentException if the units measure different things
     */
    public boolean agreesWith(Stated other) {
        return Units.compare(least(), unit, other.most(), other.unit) <= 0
                && Units.compare(other.least(), other.unit, most(), unit) <= 0;
    }

    /** The value in another unit, to as many digits as the more exactly stated of the two has. */
    public String in(Stated other) {
        int digits = Math.max(value.precision(), other.value.precision());
        BigDecimal converted = unit.convert(value, other.unit, Math.max(LEAST_DIGITS, digits));
        return converted.toPlainString() + " " + other.unit.symbol();
    }

    private BigDecimal least() {
        return value.subtract(halfOfLastDigit());
    }

    private BigDecimal most() {
        return value.add(halfOfLastDigit());
    }

    private BigDecimal halfOfLastDigit() {
        return HALF.movePointLeft(value.scale());
    }

    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
