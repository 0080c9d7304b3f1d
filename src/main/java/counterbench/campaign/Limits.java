package counterbench.campaign;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Between what a reading must lie, both ends included, in the step's unit.
 *
 * @param low the lower limit, if there is one
 * @param high the upper limit, if there is one
 */
public record Limits(@Nullable BigDecimal low, @Nullable BigDecimal high) {
    /** Whether the value lies within the limits. A value on a limit does. */
    public boolean admit(BigDecimal value) {
        Objects.requireNonNull(value, "value");
        return (low == null || value.compareTo(low) >= 0)
                && (high == null || value.compareTo(high) <= 0);
    }
}
