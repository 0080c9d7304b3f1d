package counterbench.shared.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A unit. A value in it times {@code factor}, plus {@code offset}, is the value in the base unit of
 * its measure.
 *
 * @param symbol how the program writes it
 * @param measures what it measures
 * @param factor base units in one of it, exact
 * @param offset its zero in the base unit, exact; not zero for a temperature only
 */
public record Unit(String symbol, Measure measures, BigDecimal factor, BigDecimal offset) {
    public Unit {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(measures, "measures");
        Objects.requireNonNull(factor, "factor");
        Objects.requireNonNull(offset, "offset");
        if (factor.signum() <= 0) {
            throw new IllegalArgumentException(symbol + ": factor " + factor + " is not positive");
        }
    }

    /** The value in the base unit, exact. */
    public BigDecimal toBase(BigDecimal value) {
        return value.multiply(factor).add(offset);
    }

    /**
     * The value in another unit of the same measure, to the significant digits asked, a lone 5
     * rounding to the even digit (NIST SP 811 B.7.1).
     *
     * @throws IllegalArgumentException if the other unit measures something else
     */
    public BigDecimal convert(BigDecimal value, Unit to, int significantDigits) {
        requireSameMeasure(to);
        MathContext digits = new MathContext(significantDigits, RoundingMode.HALF_EVEN);
        return toBase(value).subtract(to.offset).divide(to.factor, digits);
    }

    /**
     * The unit for differences of values in this one: a rise of 1 °C is one of 1.8 °F, without the
     * 32.
     */
    public Unit ofDifferences() {
        return new Unit(symbol, measures, factor, BigDecimal.ZERO);
    }

    /** Whether values in the two can be compared. */
    public boolean comparesWith(Unit other) {
        return measures == other.measures;
    }

    void requireSameMeasure(Unit other) {
        if (!comparesWith(other)) {
            throw new IllegalArgumentException(
                    "%s measures %s, %s measures %s"
                            .formatted(
                                    symbol,
                                    measures.words(),
                                    other.symbol,
                                    other.measures.words()));
        }
    }

    @Override
    public String toString() {
        return symbol;
    }
}
