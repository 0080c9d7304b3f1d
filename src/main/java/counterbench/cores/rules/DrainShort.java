package counterbench.cores.rules;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.shared.Minutes;
import java.math.BigDecimal;
import java.time.Duration;

/**
 * A core is packed, shipped or acknowledged, and the longest drain period that counts is shorter
 * than the minutes required. Exactly the minutes required is enough; clocks that change do not
 * matter.
 */
public final class DrainShort implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.DRAIN_SHORT;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        CoreTerms terms = facts.terms();
        if (terms != null && facts.history().isHandedOn()) {
            BigDecimal required = terms.drainMinutes();
            facts.history()
                    .drainPeriods()
                    .longest()
                    .filter(longest -> Minutes.isShorter(longest, required))
                    .ifPresent(longest -> add(facts, longest, required, findings));
        }
    }

    private void add(CoreFacts facts, Duration longest, BigDecimal required, Findings findings) {
        String was = Minutes.text(longest);
        String wanted = Minutes.text(required);
        findings.add(
                facts.finding(
                        rule(),
                        "the longest drain period is " + was + ", " + wanted + " required",
                        "required " + wanted + ", longest " + Minutes.full(longest)));
    }
}
