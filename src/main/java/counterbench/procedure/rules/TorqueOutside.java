package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.judgement.Rule;
import counterbench.procedure.Mark;
import java.util.Optional;

/** A fastener's latest reading is outside its limits; a reading on a limit is inside. */
public final class TorqueOutside extends TorqueJudge {
    public TorqueOutside() {
        super(Rule.TORQUE_OUTSIDE);
    }

    @Override
    Optional<String> judge(ProcedureFacts facts, Step step, Mark mark, Reading reading) {
        return reading.isWithin(step.limits(), Scale.of(step.unit()))
                ? Optional.empty()
                : Optional.of(
                        "read " + reading + ", wanted " + Words.limits(step.limits(), step.unit()));
    }
}
