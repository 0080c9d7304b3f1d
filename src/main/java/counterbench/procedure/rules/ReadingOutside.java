package counterbench.procedure.rules;

import counterbench.campaign.Limits;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.judgement.Rule;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The latest reading is outside its limits; on a limit it is inside. With {@code rise-from} the
 * difference to that step's latest reading is judged, and both readings are needed.
 */
public final class ReadingOutside extends StepJudge {
    public ReadingOutside() {
        super(Rule.READING_OUTSIDE);
    }

    @Override
    Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        if (step.kind() != StepKind.READING) {
            return Optional.empty();
        }
        Optional<Reading> latest = latest(step, marks);
        String from = step.riseFrom();
        return from == null
                ? latest.flatMap(reading -> plain(step, reading))
                : latest.flatMap(reading -> rise(facts, step, reading, from));
    }

    private static Optional<Reading> latest(Step step, StepMarks marks) {
        return marks.latestReading().flatMap(mark -> Reading.of(step, mark));
    }

    private static Optional<Fault> plain(Step step, Reading reading) {
        return reading.isWithin(step.limits(), Scale.of(step.unit()))
                ? Optional.empty()
                : Optional.of(
                        new Fault(
                                "read "
                                        + reading
                                        + ", wanted "
                                        + Words.limits(step.limits(), step.unit())));
    }

    private static Optional<Fault> rise(
            ProcedureFacts facts, Step step, Reading reading, String from) {
        return facts.step(from)
                .flatMap(earlier -> latest(earlier, facts.marksOf(from)))
                .filter(base -> !isWithin(step, reading, base))
                .map(base -> risen(step, reading, base, from));
    }

    private static boolean isWithin(Step step, Reading reading, Reading from) {
        Scale scale = Scale.of(step.unit());
        return reading.scale().comparesWith(scale)
                && from.scale().comparesWith(scale)
                && differences(step.limits(), scale).admit(reading.base().subtract(from.base()));
    }

    private static Limits differences(Limits limits, Scale scale) {
        BigDecimal low = limits.low();
        BigDecimal high = limits.high();
        return new Limits(
                low == null ? null : scale.difference(low),
                high == null ? null : scale.difference(high));
    }

    private static Fault risen(Step step, Reading reading, Reading from, String fromStep) {
        return new Fault(
                "read %s after %s at step %s, wanted a rise of %s"
                        .formatted(
                                reading, from, fromStep, Words.limits(step.limits(), step.unit())));
    }
}
