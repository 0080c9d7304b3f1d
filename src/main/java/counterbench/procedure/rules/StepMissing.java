package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.judgement.Rule;
import java.util.Optional;

/** An applicable step has no mark. */
public final class StepMissing extends StepJudge {
    public StepMissing() {
        super(Rule.STEP_MISSING);
    }

    @Override
    Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        return marks.all().isEmpty()
                ? Optional.of(new Fault("no mark says that it was done: " + step.what(), "no mark"))
                : Optional.empty();
    }
}
