package counterbench.acts.desk;

import counterbench.claims.Credit;
import counterbench.claims.matching.Candidate;
import counterbench.claims.matching.Matching;
import counterbench.claims.matching.Proposal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of remittances that nobody matched yet, and the claims that they may pay.
 *
 * @param jobs the job of each claim
 */
public record CreditDesk(List<Credit> credits, List<Candidate> claims, Map<String, String> jobs) {
    public CreditDesk {
        credits = List.copyOf(credits);
        claims = List.copyOf(claims);
        jobs = Map.copyOf(jobs);
    }

    /** What is to become of them. */
    public List<Proposal> proposals() {
        return Matching.of(credits, claims);
    }

    /** The names of those that do not name their claim rightly. */
    public List<String> waiting() {
        return proposals().stream()
                .filter(proposal -> proposal.verdict() != Proposal.Verdict.AS_NAMED)
                .map(proposal -> proposal.credit().name())
                .toList();
    }

    /** The line of that name, if nobody matched it yet. */
    public Optional<Credit> credit(String name) {
        return credits.stream().filter(c -> c.name().equals(name)).findFirst();
    }
}
