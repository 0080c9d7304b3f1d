package counterbench.cores;

import java.time.Duration;
import java.time.Instant;

/**
 * A begun and ended interval in which a core stood open to drain.
 *
 * @param begun its first instant
 * @param ended the instant at which it was over
 */
public record DrainPeriod(Instant begun, Instant ended) {
    public DrainPeriod {
        if (ended.isBefore(begun)) {
            throw new IllegalArgumentException(
                    "a drain period ends at " + ended + " before it begins");
        }
    }

    /** How long it was, whatever the clocks on the wall did. */
    public Duration length() {
        return Duration.between(begun, ended);
    }

    /** Whether this one, which begins no earlier, begins before the other is over, or just then. */
    boolean touches(DrainPeriod earlier) {
        return !begun.isAfter(earlier.ended);
    }

    /** The period that both cover together, where they touch. */
    DrainPeriod joinedWith(DrainPeriod other) {
        return new DrainPeriod(
                begun.isBefore(other.begun) ? begun : other.begun,
                ended.isAfter(other.ended) ? ended : other.ended);
    }
}
