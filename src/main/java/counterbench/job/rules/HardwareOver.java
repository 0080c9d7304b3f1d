package counterbench.job.rules;

import counterbench.job.Requirement;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.Quantity;
import java.util.Optional;

/**
 * More of a counted part is on the vehicle than the campaign requires; any is too much of a part
 * that it does not name. Not judged: parts that go on the core, and parts of which it cannot be
 * told how much is required.
 */
public final class HardwareOver extends HardwareJudge {
    public HardwareOver() {
        super(Rule.HARDWARE_OVER);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        facts.onVehicle().parts().stream()
                .filter(part -> !facts.unitOf(part).isMeasured())
                .filter(part -> canBeTold(facts.requirements().of(part)))
                .forEach(part -> judge(facts, part, findings));
    }

    private static boolean canBeTold(Optional<Requirement> required) {
        return required.map(r -> r.onVehicle() && !r.isConditionUnknown()).orElse(true);
    }

    private void judge(HardwareFacts facts, String part, Findings findings) {
        Quantity required =
                facts.requirements().of(part).map(Requirement::required).orElse(Quantity.ZERO);
        Quantity total = facts.onVehicle().total(part);
        if (required.isLessThan(total)) {
            String message =
                    "%s of %s on the vehicle (%s), %s required"
                            .formatted(total, facts.named(part), there(facts, part), required);
            String evidence = "required %s, %s".formatted(required, tally(facts, part));
            find(facts, findings, part, message, evidence);
        }
    }
}
