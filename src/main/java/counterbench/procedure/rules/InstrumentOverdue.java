package counterbench.procedure.rules;

import counterbench.campaign.Condition.Holds;
import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import java.time.LocalDate;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * An instrument that a mark names is unknown, was not yet calibrated on the day of use, or its last
 * calibration by then fell due before that day; on the day it falls due it is good. Every mark that
 * names an instrument is judged, unless its step does not apply to the vehicle or cannot be told
 * to. One finding for each step.
 */
public final class InstrumentOverdue extends CompletedJobJudge<ProcedureFacts> {
    public InstrumentOverdue() {
        super(Rule.INSTRUMENT_OVERDUE);
    }

    @Override
    protected void judgeCompleted(ProcedureFacts facts, Findings findings) {
        facts.markedSteps().stream()
                .filter(id -> facts.step(id).map(s -> facts.holds(s) == Holds.YES).orElse(true))
                .forEach(id -> judge(facts, id, findings));
    }

    private void judge(ProcedureFacts facts, String step, Findings findings) {
        NavigableSet<String> faults = new TreeSet<>();
        facts.marksOf(step).all().forEach(mark -> fault(facts, mark).ifPresent(faults::add));
        if (!faults.isEmpty()) {
            String all = String.join("; ", faults);
            String message = "step " + step + ": " + all;
            findings.add(facts.judged().findingOnStep(rule(), step, message, all));
        }
    }

    private static Optional<String> fault(ProcedureFacts facts, Mark mark) {
        String name = mark.instrument();
        if (name == null) {
            return Optional.empty();
        }
        LocalDate used = facts.judged().site().dayOf(mark.at());
        return facts.instrument(name)
                .map(instrument -> fault(instrument, used))
                .orElseGet(() -> Optional.of("instrument " + name + " is unknown"));
    }

    private static Optional<String> fault(Instrument instrument, LocalDate used) {
        if (instrument.isInCalibration(used)) {
            return Optional.empty();
        }
        String name = "instrument " + instrument.instrument();
        return Optional.of(
                instrument
                        .calibrationOn(used)
                        .map(c -> "%s was due on %s, used on %s".formatted(name, c.dueOn(), used))
                        .orElse(name + " was not yet calibrated on " + used));
    }
}
