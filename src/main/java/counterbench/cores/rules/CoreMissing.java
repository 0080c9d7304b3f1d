package counterbench.cores.rules;

import counterbench.cores.JobCoresFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/**
 * Fewer cores were removed in a completed job than its terms want. All lines that are known to
 * apply count together; a core of a part whose line cannot be told to apply does not stand in for
 * them.
 */
public final class CoreMissing implements Judge<JobCoresFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_MISSING;
    }

    @Override
    public void judge(JobCoresFacts facts, Findings findings) {
        int wanted = facts.due().wanted();
        int removed = facts.counted().size();
        if (facts.job().isCompleted() && removed < wanted) {
            findings.add(
                    facts.finding(
                            rule(),
                            removed
                                    + " of "
                                    + wanted
                                    + (wanted == 1 ? " core" : " cores")
                                    + " removed",
                            "wanted " + wanted + ", removed " + removed));
        }
    }
}
