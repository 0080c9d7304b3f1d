package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.judgement.Rule;
import java.util.Optional;

/** Fewer fasteners were read than the step has, and at least one was. */
public final class TorqueCount extends StepJudge {
    public TorqueCount() {
        super(Rule.TORQUE_COUNT);
    }

    @Override
    Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        int read = marks.latestByFastener().size();
        return step.kind() == StepKind.TORQUE && read > 0 && read < step.fasteners()
                ? Optional.of(new Fault(read + " of " + step.fasteners() + " fasteners read"))
                : Optional.empty();
    }
}
