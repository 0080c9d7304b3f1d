package counterbench.job.rules;

import counterbench.campaign.PartUnit;
import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.Quantity;
import org.jspecify.annotations.Nullable;

/** A rule about the hardware of a completed job. */
abstract class HardwareJudge extends CompletedJobJudge<HardwareFacts> {
    HardwareJudge(Rule rule) {
        super(rule);
    }

    final void find(
            HardwareFacts facts,
            Findings findings,
            @Nullable String part,
            String message,
            String evidence) {
        findings.add(facts.judged().findingOnPart(rule(), part, message, evidence));
    }

    /** A quantity with its unit where it is measured: {@code 3} or {@code 3.5 mL}. */
    static String amount(HardwareFacts facts, String part, Quantity quantity) {
        PartUnit unit = facts.unitOf(part);
        return unit.isMeasured() ? quantity + " " + unit.word() : quantity.toString();
    }

    /** What is on the vehicle, new and old, in words. */
    static String there(HardwareFacts facts, String part) {
        return "%s new, %s refitted"
                .formatted(
                        amount(facts, part, facts.onVehicle().fittedNew(part)),
                        amount(facts, part, facts.onVehicle().refittedOld(part)));
    }

    /** Likewise, for evidence. */
    static String tally(HardwareFacts facts, String part) {
        return "new %s, refitted %s"
                .formatted(facts.onVehicle().fittedNew(part), facts.onVehicle().refittedOld(part));
    }
}
