package counterbench.job.rules;

import counterbench.job.Requirement;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.Quantity;

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
        Quantity old = facts.onVehicle().refittedOld(part);
        String message =
                "%s %s %s new, %s %s refitted"
                        .formatted(
                                share(facts, required),
                                required.named(),
                                Quantity.ONE.equals(required.required()) ? "is" : "are",
                                amount(facts, part, old),
                                Quantity.ONE.equals(old) ? "was" : "were");
        find(facts, findings, part, message, tally(facts, part));
    }

    /** How much is new, of how much where that can be told: {@code 3 of 4}. */
    private static String share(HardwareFacts facts, Requirement required) {
        String part = required.part();
        String fresh = amount(facts, part, facts.onVehicle().fittedNew(part));
        return required.applies()
                ? fresh + " of " + amount(facts, part, required.required())
                : fresh;
    }
}
