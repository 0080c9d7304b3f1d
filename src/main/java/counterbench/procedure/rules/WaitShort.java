package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.judgement.Rule;
import counterbench.shared.Minutes;
import java.math.BigDecimal;
import java.util.Optional;

/** The latest marked time is shorter than the step's minutes. */
public final class WaitShort extends StepJudge {
    public WaitShort() {
        super(Rule.WAIT_SHORT);
    }

    @Override
    Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        BigDecimal wanted = step.minutes();
        if (step.kind() != StepKind.WAIT || wanted == null) {
            return Optional.empty();
        }
        return marks.latestWait()
                .flatMap(mark -> Optional.ofNullable(mark.minutes()))
                .filter(waited -> waited.compareTo(wanted) < 0)
                .map(waited -> fault(waited, wanted));
    }

    private static Fault fault(BigDecimal waited, BigDecimal wanted) {
        String evidence =
                "waited %s minutes, wanted %s"
                        .formatted(Words.number(waited), Words.number(wanted));
        String was = Minutes.read(waited);
        String required = Minutes.text(wanted);
        return new Fault(
                was.equals(required) ? evidence : "waited " + was + ", wanted " + required,
                evidence);
    }
}
