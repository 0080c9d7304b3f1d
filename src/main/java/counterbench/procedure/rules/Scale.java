package counterbench.procedure.rules;

import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The scale that values in a unit lie on. Values in a unit that the program knows are brought to
 * its base unit, exactly; those in any other are taken as they stand and compare with the same unit
 * only.
 */
final class Scale {
    private final String name;
    private final Optional<Unit> unit;

    private Scale(String name) {
        this.name = name;
        this.unit = Units.parse(name);
    }

    /** The scale of a unit; no unit is one of its own. */
    static Scale of(@Nullable String unit) {
        return new Scale(unit == null ? "" : unit);
    }

    /** Whether values on the two can be compared. */
    boolean comparesWith(Scale other) {
        if (unit.isPresent() && other.unit.isPresent()) {
            return unit.get().comparesWith(other.unit.get());
        }
        return name.equals(other.name);
    }

    /** A value, brought to the base unit. */
    BigDecimal value(BigDecimal value) {
        return unit.map(u -> u.toBase(value)).orElse(value);
    }

    /** A difference of two values, brought to the base unit. */
    BigDecimal difference(BigDecimal difference) {
        return unit.map(u -> u.ofDifferences().toBase(difference)).orElse(difference);
    }

    /** The unit, as it was written. */
    @Override
    public String toString() {
        return name;
    }
}
