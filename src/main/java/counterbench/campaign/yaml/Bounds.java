package counterbench.campaign.yaml;

import counterbench.campaign.Limits;
import counterbench.shared.units.Measure;
import counterbench.shared.units.Stated;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * {@code low} and {@code high} of a step as stated, with what stands beside them in a second unit.
 */
final class Bounds {
    /**
     * A limit stated in another unit than the step's may have no finite decimal in it. Rounded to
     * this many digits it still decides every reading of up to ten decimals as the exact limit
     * would: such a reading lies further from a limit that is no finite decimal.
     */
    private static final int DIGITS = 34;

    private final Fields fields;
    private final boolean isDifference;
    private final Optional<Stated> low;
    private final Optional<Stated> high;
    private final boolean inOrder;

    /**
     * @param usual the unit of a bound that bears none
     * @param wanted what the bounds measure
     * @param isDifference whether they bound a rise, not a value
     */
    Bounds(Fields fields, @Nullable Unit usual, @Nullable Measure wanted, boolean isDifference) {
        this.fields = fields;
        this.isDifference = isDifference;
        this.low = read("low", usual, wanted);
        this.high = read("high", usual, wanted);
        this.inOrder = low.isEmpty() || high.isEmpty() || !isAbove(low.get(), high.get());
        if (!inOrder) {
            refuse(
                    "low",
                    "it is above high " + high.orElseThrow(),
                    "exchange the two, or mend one");
        }
    }

    private Optional<Stated> read(String key, @Nullable Unit usual, @Nullable Measure wanted) {
        return fields.get(key)
                .flatMap(v -> StatedReader.read(v, usual, wanted))
                .map(this::asBound)
                .filter(s -> isPossible(key, s));
    }

    private Stated asBound(Stated stated) {
        return isDifference ? new Stated(stated.value(), stated.unit().ofDifferences()) : stated;
    }

    private boolean isPossible(String key, Stated stated) {
        boolean possible =
                stated.value().signum() >= 0
                        || isDifference
                        || stated.unit().measures().mayBeNegative();
        if (!possible) {
            refuse(key, "it is negative", "write 0 or more");
        }
        return possible;
    }

    static boolean isAbove(Stated a, Stated b) {
        return a.unit().comparesWith(b.unit())
                && Units.compare(a.value(), a.unit(), b.value(), b.unit()) > 0;
    }

    Optional<Stated> low() {
        return low;
    }

    Optional<Stated> high() {
        return high;
    }

    /** Whether low is not above high. */
    boolean areInOrder() {
        return inOrder;
    }

    /** The unit that a bound bears, if one does. */
    Optional<Unit> unit() {
        return low.or(() -> high).map(Stated::unit);
    }

    void refuse(String key, String why, String todo) {
        fields.get(key).ifPresent(v -> v.refuse(why, todo));
    }

    /** The bounds in a unit of the same measure. */
    Limits in(Unit unit) {
        return new Limits(in(low, unit), in(high, unit));
    }

    private @Nullable BigDecimal in(Optional<Stated> bound, Unit unit) {
        Unit to = isDifference ? unit.ofDifferences() : unit;
        return bound.filter(b -> b.unit().comparesWith(to)).map(b -> in(b, to)).orElse(null);
    }

    /** The value in a unit: as it stands in its own, else to 34 digits. */
    static BigDecimal in(Stated stated, Unit unit) {
        return stated.unit().equals(unit)
                ? stated.value()
                : stated.unit().convert(stated.value(), unit, DIGITS);
    }

    /** What {@code also-low} and {@code also-high} say, checked against the bounds. */
    @Nullable String also() {
        String both =
                Stream.of(also("low", low), also("high", high))
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(", "));
        return both.isEmpty() ? null : both;
    }

    private Optional<String> also(String key, Optional<Stated> bound) {
        return SecondUnit.read(fields, "also-" + key, key, bound, this::asBound)
                .map(also -> key + " " + also);
    }
}
