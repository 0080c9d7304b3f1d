package counterbench.procedure.rules;

import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How uncertain an instrument is, by its last calibration not after the day of use: the larger of
 * percent of the reading and the absolute amount in the instrument's unit.
 */
record Uncertainty(Instrument instrument, Calibration calibration) {
    /** That of the instrument that a mark names; empty if it, or a calibration, is unknown. */
    static Optional<Uncertainty> of(ProcedureFacts facts, Mark mark) {
        return facts.instrument(mark.instrument())
                .flatMap(
                        i ->
                                i.calibrationOn(facts.judged().site().dayOf(mark.at()))
                                        .map(c -> new Uncertainty(i, c)));
    }

    /** At a reading, in the reading's base unit; zero where the calibration states none. */
    BigDecimal at(Reading reading) {
        return relative(reading).max(absolute(reading.scale()));
    }

    private BigDecimal relative(Reading reading) {
        BigDecimal percent = calibration.uncertaintyPercent();
        BigDecimal size = reading.scale().difference(reading.value()).abs();
        return percent == null ? BigDecimal.ZERO : size.multiply(percent).movePointLeft(2);
    }

    private BigDecimal absolute(Scale reading) {
        BigDecimal amount = calibration.uncertainty();
        Scale own = Scale.of(instrument.unit());
        return amount == null || !own.comparesWith(reading)
                ? BigDecimal.ZERO
                : own.difference(amount);
    }

    /** As stated: {@code 4 % or 0.5 N·m}. */
    @Override
    public String toString() {
        Stream<String> percent =
                Stream.ofNullable(calibration.uncertaintyPercent())
                        .map(p -> Words.number(p) + " %");
        Stream<String> absolute =
                Stream.ofNullable(calibration.uncertainty())
                        .map(u -> Words.number(u) + Words.unit(instrument.unit()));
        return Stream.concat(percent, absolute).collect(Collectors.joining(" or "));
    }
}
