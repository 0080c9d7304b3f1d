package counterbench.procedure;

import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The record that a step was done.
 *
 * @param value what was read, in {@code unit}
 * @param unit the unit that it was read in; the step's own if null
 * @param fastener which fastener, from 1
 * @param minutes how long, for a wait
 */
public record Mark(
        Address address,
        String step,
        Instant at,
        @Nullable BigDecimal value,
        @Nullable String unit,
        int fastener,
        @Nullable BigDecimal minutes,
        @Nullable String instrument,
        @Nullable String by) {
    public Mark {
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(at, "at");
    }
}
