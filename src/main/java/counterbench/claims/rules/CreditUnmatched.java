package counterbench.claims.rules;

import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A credit that belongs to no claim: it names one that does not exist, or names none and nobody has
 * matched it. A core credit that names a core we know belongs to that core and needs no claim.
 */
public final class CreditUnmatched implements Judge<CreditFacts> {
    @Override
    public Rule rule() {
        return Rule.CREDIT_UNMATCHED;
    }

    @Override
    public void judge(CreditFacts facts, Findings findings) {
        Credit credit = facts.credit();
        boolean belongsToCore = credit.kind() == Credit.Kind.CORE && facts.core() != null;
        if (facts.claim() == null && !belongsToCore) {
            String amount = Amounts.text(credit.amount(), facts.site());
            String names = names(credit);
            findings.add(
                    facts.finding(
                            rule(),
                            amount
                                    + " of "
                                    + credit.paidOn()
                                    + " belong to no claim; names "
                                    + names,
                            amount + " of " + credit.paidOn() + ", names " + names));
        }
    }

    private static String names(Credit credit) {
        List<String> said =
                Stream.of(
                                said("claim", credit.claim()),
                                said("VIN", credit.vin()),
                                said("core", credit.core()),
                                said("serial", credit.serial()))
                        .filter(text -> !text.isEmpty())
                        .toList();
        return said.isEmpty() ? "nothing" : String.join(", ", said);
    }

    private static String said(String what, @Nullable String name) {
        return name == null ? "" : what + " " + name;
    }
}
