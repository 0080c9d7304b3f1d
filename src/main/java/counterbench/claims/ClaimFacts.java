package counterbench.claims;

import counterbench.campaign.ClaimTerms;
import counterbench.job.Job;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the rules read about one claim.
 *
 * @param job its job, if there is one of that name
 * @param others the other claims of the same job
 * @param terms the claim terms of the pack that the job is judged by, if it has them
 * @param needsMet whether the job's cores met the terms' needs at the end of the day of submission
 * @param credits the credits that belong to it, core credits included or not
 * @param asOf the clock of the review; no fact is later
 */
public record ClaimFacts(
        Site site,
        Claim claim,
        @Nullable Job job,
        List<Claim> others,
        @Nullable ClaimTerms terms,
        boolean needsMet,
        List<Credit> credits,
        Instant asOf) {
    public ClaimFacts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(claim, "claim");
        others = List.copyOf(others);
        credits = List.copyOf(credits);
        Objects.requireNonNull(asOf, "asOf");
    }

    /** The credits that pay it: all but core credits, which clear core charges. */
    public List<Credit> payments() {
        return credits.stream().filter(c -> c.kind() != Credit.Kind.CORE).toList();
    }

    /** Whether a claim is neither withdrawn nor denied by now. */
    public boolean stands(Claim one) {
        return one.fallsOn().filter(day -> !asOf.isBefore(site.startOf(day))).isEmpty();
    }

    /** A finding on the claim, in the month of its submission. */
    public Finding finding(Rule rule, String message, String evidence) {
        return new Finding(
                rule,
                site.site(),
                job == null ? null : job.campaign(),
                Subject.of(SubjectKind.CLAIM, claim.claim()),
                YearMonth.from(claim.submittedOn()),
                "claim " + claim.claim() + ": " + message,
                evidence);
    }
}
