package counterbench.procedure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One calibration of an instrument.
 *
 * @param uncertaintyPercent uncertainty in percent of the reading, if stated
 * @param uncertainty uncertainty in the instrument's unit, if stated
 */
public record Calibration(
        LocalDate calibratedOn,
        LocalDate dueOn,
        @Nullable String certificate,
        @Nullable BigDecimal uncertaintyPercent,
        @Nullable BigDecimal uncertainty) {
    public Calibration {
        Objects.requireNonNull(calibratedOn, "calibratedOn");
        Objects.requireNonNull(dueOn, "dueOn");
    }
}
