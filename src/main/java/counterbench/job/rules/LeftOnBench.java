package counterbench.job.rules;

import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.shared.Quantity;
import java.util.TreeMap;

/**
 * The bench account of a completed or abandoned job is not zero: something was issued and neither
 * fitted, put back nor scrapped, or more was used than was ever issued.
 */
public final class LeftOnBench implements Judge<HardwareFacts> {
    @Override
    public Rule rule() {
        return Rule.LEFT_ON_BENCH;
    }

    @Override
    public void judge(HardwareFacts facts, Findings findings) {
        if (facts.judged().isCompleted() || facts.judged().isAbandoned()) {
            new TreeMap<>(facts.goods().bench())
                    .forEach((part, left) -> judge(facts, part, left, findings));
        }
    }

    private void judge(HardwareFacts facts, String part, Quantity left, Findings findings) {
        if (left.isZero()) {
            return;
        }
        Quantity amount = left.isNegative() ? left.negate() : left;
        String said = HardwareJudge.amount(facts, part, amount) + " of " + facts.named(part);
        String message =
                left.isNegative()
                        ? said + " used beyond what was issued"
                        : said + " still on its bench account";
        findings.add(facts.judged().findingOnPart(rule(), part, message, "left " + left));
    }
}
