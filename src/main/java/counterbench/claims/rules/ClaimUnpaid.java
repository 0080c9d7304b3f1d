package counterbench.claims.rules;

import counterbench.claims.Claim;
import counterbench.claims.ClaimFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.time.LocalDate;

/**
 * The claim was submitted longer ago than the site's patience and no credit, core credits apart,
 * has come for it. Patience is over when the day so many days after submission ends, at midnight of
 * the site. A claim that was withdrawn or denied since has not been paid either, and says so.
 */
public final class ClaimUnpaid implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.CLAIM_UNPAID;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        Claim claim = facts.claim();
        if (!facts.payments().isEmpty()) {
            return;
        }
        LocalDate last = claim.submittedOn().plusDays(facts.site().patience().creditDays());
        Instant over = facts.site().endOf(last);
        if (facts.asOf().isBefore(over)) {
            findings.changesAt(over);
            return;
        }
        findings.add(
                facts.finding(
                        rule(),
                        "submitted on " + claim.submittedOn() + ", no credit by " + last,
                        "submitted on " + claim.submittedOn() + ", patience until " + last));
    }
}
