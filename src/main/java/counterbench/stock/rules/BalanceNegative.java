package counterbench.stock.rules;

import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import counterbench.stock.BelowZero;

/**
 * More left a store or kit account than the paper says ever came in. One finding for each account
 * and part, in the month in which it first fell below zero.
 */
public final class BalanceNegative implements Judge<StockFacts> {
    @Override
    public Rule rule() {
        return Rule.BALANCE_NEGATIVE;
    }

    @Override
    public void judge(StockFacts facts, Findings findings) {
        facts.belowZero().forEach(below -> findings.add(finding(facts.site(), below)));
    }

    private Finding finding(Site site, BelowZero below) {
        String account = below.account().toString();
        return new Finding(
                rule(),
                site.site(),
                null,
                Subject.ofPart(SubjectKind.ACCOUNT, account, below.part()),
                site.monthOf(below.at()),
                String.format(
                        "%s held %s of %s after entry %s on %s: more was taken out than ever came in",
                        account,
                        below.balance(),
                        below.part(),
                        below.fact(),
                        site.dayOf(below.at())),
                String.format("balance %s at %s", below.balance(), below.at()));
    }
}
