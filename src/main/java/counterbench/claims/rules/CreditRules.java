package counterbench.claims.rules;

import counterbench.claims.CreditFacts;
import counterbench.judgement.Judge;
import java.util.List;

/** The rules that judge one credit. */
public final class CreditRules {
    /** All of them. */
    public static final List<Judge<CreditFacts>> ALL = List.of(new CreditUnmatched());

    private CreditRules() {}
}
