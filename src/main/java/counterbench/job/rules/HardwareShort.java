package counterbench.job.rules;

import counterbench.job.Requirement;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;

/** Less of a part is on the vehicle than required; of a measured part, less than will do. */
public final class HardwareShort extends HardwareJudge {
    public HardwareShort() {
        super(Rule.HARDWARE_SHORT);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        facts.requirements().onVehicle().stream()
                .filter(Requirement::applies)
                .filter(r -> facts.onVehicle().total(r.part()).isLessThan(r.least()))
                .forEach(r -> judge(facts, r, findings));
    }

    private void judge(HardwareFacts facts, Requirement required, Findings findings) {
        String part = required.part();
        String message =
                "%s of %s%s %s on the vehicle (%s)"
                        .formatted(
                                amount(facts, part, facts.onVehicle().total(part)),
                                required.unit().isMeasured() ? "at least " : "",
                                amount(facts, part, required.least()),
                                required.named(),
                                there(facts, part));
        String evidence = "required %s, %s".formatted(required.least(), tally(facts, part));
        find(facts, findings, part, message, evidence);
    }
}
