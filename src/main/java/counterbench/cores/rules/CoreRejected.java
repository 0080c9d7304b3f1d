package counterbench.cores.rules;

import counterbench.cores.Answer;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;

/** The return centre refused the core and has not accepted it since. */
public final class CoreRejected implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_REJECTED;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        facts.history()
                .verdict()
                .filter(verdict -> verdict.kind() == CoreEvent.Kind.REJECTED)
                .ifPresent(verdict -> add(facts, verdict, findings));
    }

    private void add(CoreFacts facts, Answer verdict, Findings findings) {
        String reason = verdict.reason() == null ? "no reason said" : verdict.reason();
        String text = "rejected on " + facts.site().dayOf(verdict.at()) + ": " + reason;
        findings.add(facts.finding(rule(), text, text));
    }
}
