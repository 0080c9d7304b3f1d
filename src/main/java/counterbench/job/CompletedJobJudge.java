package counterbench.job;

import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/**
 * A rule that judges completed jobs only. Work that still goes on, was not needed or was given up
 * has nothing to answer for yet, or at all.
 *
 * @param <F> the facts that it judges
 */
public abstract class CompletedJobJudge<F extends JobFacts> implements Judge<F> {
    private final Rule rule;

    protected CompletedJobJudge(Rule rule) {
        this.rule = rule;
    }

    @Override
    public final Rule rule() {
        return rule;
    }

    @Override
    public final void judge(F facts, Findings findings) {
        if (facts.judged().isCompleted()) {
            judgeCompleted(facts, findings);
        }
    }

    /** Judges a job that is completed. */
    protected abstract void judgeCompleted(F facts, Findings findings);
}
