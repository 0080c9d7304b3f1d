package counterbench.claims.rules;

import counterbench.campaign.ClaimTerms;
import counterbench.claims.ClaimFacts;
import counterbench.job.Job;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.time.LocalDate;

/** The claim was submitted on a later day than so many days after its job's completion. */
public final class ClaimedLate implements Judge<ClaimFacts> {
    @Override
    public Rule rule() {
        return Rule.CLAIMED_LATE;
    }

    @Override
    public void judge(ClaimFacts facts, Findings findings) {
        Job job = facts.job();
        ClaimTerms terms = facts.terms();
        if (job == null || !job.isCompleted() || terms == null) {
            return;
        }
        Instant completed = job.completedAt();
        Integer within = terms.submitWithinDays();
        if (completed != null && within != null) {
            judge(facts, facts.site().dayOf(completed).plusDays(within), findings);
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
