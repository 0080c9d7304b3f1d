package counterbench.claims.rules;

import counterbench.claims.ClaimFacts;
import counterbench.judgement.Judge;
import java.util.List;

/** The rules that judge one claim. */
public final class ClaimRules {
    /** All of them, in the order of {@link counterbench.judgement.Rule}. */
    public static final List<Judge<ClaimFacts>> ALL =
            List.of(
                    new ClaimedTwice(),
                    new ClaimedLate(),
                    new ClaimUngrounded(),
                    new ClaimUnpaid(),
                    new PaidDifferently());

    private ClaimRules() {}
}
