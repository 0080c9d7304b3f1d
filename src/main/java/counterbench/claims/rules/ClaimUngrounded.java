package counterbench.claims.rules;

import counterbench.campaign.ClaimTerms;
import counterbench.claims.ClaimFacts;
import counterbench.claims.draft.DraftClaim;
import counterbench.job.Job;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * At the end of the claim's day of submission, at midnight of the site, its job was not completed,
 * or its cores did not meet what the terms need. On that day itself the facts known so far are
 * judged. A job that was closed as not needed counts as completed where the terms pay for that, and
 * owes no core.
 */
public final class ClaimUngrounded implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.CLAIM_UNGROUNDED;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        List<String> lacks =
                Stream.of(jobLacks(facts), coreLacks(facts)).flatMap(Optional::stream).toList();
        if (!lacks.isEmpty()) {
            String why = String.join(" and ", lacks);
            String day = "on " + facts.claim().submittedOn();
            findings.add(
                    facts.finding(rule(), "submitted " + day + ", when " + why, day + " " + why));
        }
    }

    private static Optional<String> jobLacks(ClaimFacts facts) {
        Instant end = facts.site().endOf(facts.claim().submittedOn());
        return Optional.ofNullable(facts.job())
                        .filter(job -> DraftClaim.isDone(job, facts.terms()))
                        .map(Job::completedAt)
                        .filter(end::isAfter)
                        .isPresent()
                ? Optional.empty()
                : Optional.of("job " + facts.claim().job() + " was not completed");
    }

    private static Optional<String> coreLacks(ClaimFacts facts) {
        ClaimTerms terms = facts.terms();
        if (terms == null || facts.needsMet() || owesNoCore(facts)) {
            return Optional.empty();
        }
        return switch (terms.needs()) {
            case NONE -> Optional.empty();
            case CORE_SHIPPED -> Optional.of("its core was not shipped");
            case CORE_ACKNOWLEDGED -> Optional.of("its core was not acknowledged");
        };
    }

    /** A vehicle that did not need the work keeps its unit. */
    private static boolean owesNoCore(ClaimFacts facts) {
        Job job = facts.job();
        return job != null && !job.isCompleted() && DraftClaim.isDone(job, facts.terms());
    }
}
