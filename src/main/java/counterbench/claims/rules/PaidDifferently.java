package counterbench.claims.rules;

import counterbench.claims.ClaimFacts;
import counterbench.claims.Credit;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.math.BigDecimal;

/**
 * The credits for a claim, core credits apart, do not sum to its total.
 *
 * <p>The total is labour, parts and core charge, as far as the claim states them. The core charge
 * is part of it although core credits are set apart: a claim asks for its whole total and other
 * credits pay claims, while a core credit clears the charge that is owed until the core is
 * accepted. A claim without any credit, or without any amount, is not judged.
 */
public final class PaidDifferently implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.PAID_DIFFERENTLY;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        facts.payments().stream()
                .map(Credit::amount)
                .reduce(BigDecimal::add)
                .ifPresent(paid -> judge(facts, paid, findings));
    }

    private void judge(ClaimFacts facts, BigDecimal paid, Findings findings) {
        facts.claim()
                .total()
                .filter(total -> total.compareTo(paid) != 0)
                .ifPresent(total -> add(facts, total, paid, findings));
    }

    private void add(ClaimFacts facts, BigDecimal total, BigDecimal paid, Findings findings) {
        String asked = Amounts.text(total, facts.site());
        String came = Amounts.text(paid, facts.site());
        String difference = Amounts.text(paid.subtract(total), facts.site());
        findings.add(
                facts.finding(
                        rule(),
                        "claimed " + asked + ", credited " + came + ", difference " + difference,
                        "claimed " + asked + ", credited " + came));
    }
}
