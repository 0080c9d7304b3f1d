package counterbench.claims.rules;

import counterbench.claims.Claim;
import counterbench.claims.ClaimFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An earlier claim, not withdrawn or denied by now, has the same job. Earlier is by day of
 * submission, then by row. A claim that says that it replaces the other is judged alike: the other
 * must be withdrawn.
 */
public final class ClaimedTwice implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.CLAIMED_TWICE;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        Claim claim = facts.claim();
        List<Claim> earlier =
                facts.others().stream()
                        .filter(other -> other.job().equals(claim.job()))
                        .filter(other -> Claim.ORDER.compare(other, claim) < 0)
                        .filter(facts::stands)
                        .sorted(Claim.ORDER)
                        .toList();
        if (!earlier.isEmpty()) {
            add(facts, earlier, findings);
        }
    }

    private void add(ClaimFacts facts, List<Claim> earlier, Findings findings) {
        String job = facts.claim().job();
        String names =
                earlier.stream()
                        .map(c -> c.claim() + " of " + c.submittedOn())
                        .collect(Collectors.joining(", "));
        findings.add(
                facts.finding(
                        rule(),
                        "job " + job + " was claimed before by " + names,
                        "job " + job + ", earlier " + names));
        earlier.stream()
                .flatMap(c -> c.fallsOn().stream())
                .forEach(day -> findings.changesAt(facts.site().startOf(day)));
    }
}
