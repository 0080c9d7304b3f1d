package counterbench.procedure;

import java.util.List;
import java.util.Objects;
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
}
