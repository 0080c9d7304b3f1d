package counterbench.job.rules;

import counterbench.job.Requirement;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;

/**
 * A single-use part is on the vehicle that was there before. Whether the campaign requires it of
 * this vehicle does not matter: nothing that serves once may serve twice.
 */
public final class ReusedHardware extends HardwareJudge {
    public ReusedHardware() {
        super(Rule.REUSED_HARDWARE);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        facts.requirements().all().stream()
                .filter(Requirement::singleUse)
                .filter(r -> facts.onVehicle().refittedOld(r.part()).isPositive())
                .forEach(r -> judge(facts, r, findings));
    }

    private void judge(HardwareFacts facts, Requirement required, Findings findings) {
        String part = required.part();
        String message =
                "%s serves once, but an old one is on the vehicle (%s)"
                        .formatted(required.named(), there(facts, part));
        find(facts, findings, part, message, tally(facts, part));
    }
}
