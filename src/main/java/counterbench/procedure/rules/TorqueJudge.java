package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.judgement.Rule;
import counterbench.procedure.Mark;
import java.util.List;
import java.util.Optional;

/** A rule about the latest reading of each fastener of an applicable torque step. */
abstract class TorqueJudge extends StepJudge {
    TorqueJudge(Rule rule) {
        super(rule);
    }

    @Override
    final Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        if (step.kind() != StepKind.TORQUE) {
            return Optional.empty();
        }
        List<String> faults =
                marks.latestByFastener().values().stream()
                        .flatMap(mark -> judge(facts, step, mark).stream())
                        .toList();
        return faults.isEmpty()
                ? Optional.empty()
                : Optional.of(new Fault(String.join("; ", faults)));
    }

    private Optional<String> judge(ProcedureFacts facts, Step step, Mark mark) {
        return Reading.of(step, mark)
                .flatMap(reading -> judge(facts, step, mark, reading))
                .map(fault -> "fastener " + mark.fastener() + " " + fault);
    }

    /** What is wrong with a fastener's latest reading; empty if nothing is. */
    abstract Optional<String> judge(ProcedureFacts facts, Step step, Mark mark, Reading reading);
}
