package counterbench.procedure;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A torque wrench, meter or tachometer, with its calibrations. */
public record Instrument(
        String instrument,
        String kind,
        String unit,
        @Nullable String serial,
        List<Calibration> calibrations) {
    public Instrument {
        Objects.requireNonNull(instrument, "instrument");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        calibrations = List.copyOf(calibrations);
    }

    /** The calibration by which it is used on a day: the last one not after it. */
    public Optional<Calibration> calibrationOn(LocalDate day) {
        return calibrations.stream()
                .filter(c -> !c.calibratedOn().isAfter(day))
                .max(Comparator.comparing(Calibration::calibratedOn));
    }

    /** Whether it is in calibration on a day; on the day on which that falls due it still is. */
    public boolean isInCalibration(LocalDate day) {
        return calibrationOn(day).filter(c -> !c.dueOn().isBefore(day)).isPresent();
    }
}
