package counterbench.cores.rules;

import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.time.LocalDate;

/**
 * A core was shipped longer ago than the site's patience and the return centre has not said a word
 * of it. Patience starts on the day of the first shipping and is over when the day so many days
 * later ends, at midnight of the site.
 */
public final class CoreUnacknowledged implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_UNACKNOWLEDGED;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        if (!facts.history().isAcknowledged()) {
            facts.history()
                    .firstShipped()
                    .map(facts.site()::dayOf)
                    .ifPresent(day -> judge(facts, day, findings));
        }
    }

    private void judge(CoreFacts facts, LocalDate shipped, Findings findings) {
        LocalDate last = shipped.plusDays(facts.site().patience().acknowledgementDays());
        Instant over = facts.site().endOf(last);
        if (facts.asOf().isBefore(over)) {
            findings.changesAt(over);
        } else {
            findings.add(
                    facts.finding(
                            rule(),
                            "shipped on " + shipped + ", not acknowledged by " + last,
                            "shipped on " + shipped + ", patience until " + last));
        }
    }
}
