package counterbench.campaign.yaml;

import counterbench.campaign.Limits;
import counterbench.shared.units.Measure;
import counterbench.shared.units.Stated;
import counterbench.shared.units.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Reads what a torque step asks: a torque and how far off it may be, or two limits. */
final class TorqueReader {
    private static final BigDecimal HUNDRED = new BigDecimal(100);
    private static final String EXAMPLE = "within: 10 %, within: 3 N·m, or low and high";

    private final Fields fields;

    private TorqueReader(Fields fields) {
        this.fields = fields;
    }

    static Demand read(Fields fields) {
        return new TorqueReader(fields).demand();
    }

    private Demand demand() {
        Optional<Unit> said = fields.get("unit").flatMap(v -> StatedReader.unit(v, Measure.TORQUE));
        Optional<Stated> torque =
                fields.get("torque")
                        .flatMap(v -> StatedReader.read(v, said.orElse(null), Measure.TORQUE))
                        .filter(this::isPositive);
        refuseKeysApart();
        boolean isUnclear =
                fields.has("torque") ? torque.isEmpty() : fields.has("unit") && said.isEmpty();
        return isUnclear ? Demand.NONE : demand(said, torque);
    }

    private Demand demand(Optional<Unit> said, Optional<Stated> torque) {
        Optional<Unit> usual = torque.map(Stated::unit).or(() -> said);
        Bounds bounds = new Bounds(fields, usual.orElse(null), Measure.TORQUE, false);
        Optional<Unit> unit = usual.or(bounds::unit);
        refuseUnitsApart(said, unit);
        torque.filter(t -> bounds.areInOrder()).ifPresent(t -> refuseOutside(t, bounds));
        Limits limits =
                fields.has("within")
                        ? torque.map(this::around).orElse(Demand.NO_LIMITS)
                        : unit.map(bounds::in).orElse(Demand.NO_LIMITS);
        return new Demand(
                unit.map(Unit::symbol).orElse(null),
                torque.map(Stated::value).orElse(null),
                limits,
                also(torque, bounds));
    }

    private boolean isPositive(Stated torque) {
        boolean positive = torque.value().signum() > 0;
        if (!positive) {
            refuse("torque", "it is not above zero", "write the torque of the maker's procedure");
        }
        return positive;
    }

    private void refuseUnitsApart(Optional<Unit> said, Optional<Unit> used) {
        if (said.isPresent() && !said.equals(used)) {
            refuse("unit", "the torque is stated in " + used.orElse(said.get()), "leave it out");
        }
    }

    private void refuseKeysApart() {
        boolean hasLimit = fields.has("low") || fields.has("high");
        if (!fields.has("within") && !hasLimit) {
            fields.missing("limits", EXAMPLE);
        }
        if (fields.has("within") && hasLimit) {
            refuse("within", "low or high say it already", "keep one of the two");
        }
        if (fields.has("within") && !fields.has("torque")) {
            fields.missing("torque", "torque: 41 N·m");
        }
    }

    private void refuseOutside(Stated torque, Bounds bounds) {
        if (bounds.low().filter(low -> Bounds.isAbove(low, torque)).isPresent()) {
            bounds.refuse("low", "it is above the torque " + torque, "mend one of the two");
        }
        if (bounds.high().filter(high -> Bounds.isAbove(torque, high)).isPresent()) {
            bounds.refuse("high", "it is below the torque " + torque, "mend one of the two");
        }
    }

    private Limits around(Stated torque) {
        return fields.get("within")
                .flatMap(v -> reach(v, torque))
                .map(r -> new Limits(torque.value().subtract(r), torque.value().add(r)))
                .orElse(Demand.NO_LIMITS);
    }

    private Optional<BigDecimal> reach(Value within, Stated torque) {
        Optional<Matcher> parts = StatedReader.parts(within);
        if (parts.filter(p -> p.group(2).isEmpty()).isPresent()) {
            within.refuse("it is neither a percentage nor a torque", "write " + EXAMPLE);
            return Optional.empty();
        }
        boolean isPercent = parts.filter(Percent::isPercent).isPresent();
        Optional<BigDecimal> reach =
                isPercent
                        ? Percent.read(within).map(p -> percentOf(torque, p))
                        : parts.flatMap(p -> StatedReader.read(within, null, Measure.TORQUE))
                                .map(s -> Bounds.in(s, torque.unit()));
        return reach.filter(r -> leavesRoom(within, r, torque));
    }

    private static BigDecimal percentOf(Stated torque, BigDecimal percent) {
        return torque.value().multiply(percent).divide(HUNDRED);
    }

    private static boolean leavesRoom(Value within, BigDecimal reach, Stated torque) {
        if (reach.signum() <= 0) {
            within.refuse("it is not above zero", "write " + EXAMPLE);
        } else if (reach.compareTo(torque.value()) >= 0) {
            within.refuse("it is no less than the torque " + torque, "write " + EXAMPLE);
        } else {
            return true;
        }
        return false;
    }

    private @Nullable String also(Optional<Stated> torque, Bounds bounds) {
        Optional<Stated> also =
                SecondUnit.read(fields, "also", "torque", torque, UnaryOperator.identity());
        @Nullable String ofBounds = bounds.also();
        return ofBounds == null
                ? also.map(Stated::toString).orElse(null)
                : also.map(a -> a + ", " + ofBounds).orElse(ofBounds);
    }

    private void refuse(String key, String why, String todo) {
        fields.get(key).ifPresent(v -> v.refuse(why, todo));
    }
}
