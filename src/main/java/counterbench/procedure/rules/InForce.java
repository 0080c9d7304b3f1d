package counterbench.procedure.rules;

import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/** Finds the calibration by which an instrument was used on a day. */
final class InForce {
    private InForce() {}

    /** The last calibration not after the day. */
    static Optional<Calibration> of(Instrument instrument, LocalDate day) {
        return instrument.calibrations().stream()
                .filter(c -> !c.calibratedOn().isAfter(day))
                .max(Comparator.comparing(Calibration::calibratedOn));
    }
}
