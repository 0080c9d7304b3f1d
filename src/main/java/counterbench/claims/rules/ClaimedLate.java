package counterbench.claims.rules;

import counterbench.campaign.ClaimTerms;
import counterbench.claims.ClaimFacts;
import counterbench.claims.draft.DraftClaim;
import counterbench.job.Job;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.time.LocalDate;

/**
 * The claim was submitted on a later day than so many days after its job's completion. A job that
 * was closed as not needed counts as completed where the terms pay for that.
 */
public final class ClaimedLate implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.CLAIMED_LATE;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        Job job = facts.job();
        ClaimTerms terms = facts.terms();
        if (job == null || terms == null || !DraftClaim.isDone(job, terms)) {
            return;
        }
        Instant completed = job.completedAt();
        if (completed != null) {
            terms.lastDay(facts.site().dayOf(completed))
                    .ifPresent(due -> judge(facts, due, findings));
        }
    }

    private void judge(ClaimFacts facts, LocalDate due, Findings findings) {
        LocalDate submitted = facts.claim().submittedOn();
        if (submitted.isAfter(due)) {
            String text = "due by " + due + ", submitted on " + submitted;
            findings.add(facts.finding(rule(), text, text));
        }
    }
}
