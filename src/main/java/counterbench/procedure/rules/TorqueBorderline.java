package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.judgement.Rule;
import counterbench.procedure.Mark;
import java.util.Optional;

/**
 * A fastener's latest reading is inside its limits, but nearer to one than its instrument is
 * certain. Just as near as it is certain is near enough.
 */
public final class TorqueBorderline extends TorqueJudge {
    public TorqueBorderline() {
        super(Rule.TORQUE_BORDERLINE);
    }

    @Override
    Optional<String> judge(ProcedureFacts facts, Step step, Mark mark, Reading reading) {
        return Uncertainty.of(facts, mark)
                .filter(uncertainty -> isBorderline(step, reading, uncertainty))
                .map(uncertainty -> words(step, mark, reading, uncertainty));
    }

    private static boolean isBorderline(Step step, Reading reading, Uncertainty uncertainty) {
        Scale limits = Scale.of(step.unit());
        return reading.isWithin(step.limits(), limits)
                && reading.room(step.limits(), limits)
                        .filter(room -> room.compareTo(uncertainty.at(reading)) < 0)
                        .isPresent();
    }

    private static String words(Step step, Mark mark, Reading reading, Uncertainty uncertainty) {
        return "read %s, nearer to a limit (%s) than instrument %s is certain (%s)"
                .formatted(
                        reading,
                        Words.limits(step.limits(), step.unit()),
                        mark.instrument(),
                        uncertainty);
    }
}
