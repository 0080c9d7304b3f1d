package counterbench.cores.rules;

import counterbench.cores.CoreFacts;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The core of a completed job was not shipped by the end, at midnight of the site, of the day so
 * many days after completion. One shipped later counts too.
 */
public final class CoreOverdue implements Judge<CoreFacts> {
    @Override
    public Rule rule() {
        return Rule.CORE_OVERDUE;
    }

    @Override
    public void judge(CoreFacts facts, Findings findings) {
        facts.shipBy().ifPresent(day -> judge(facts, day, findings));
    }

    private void judge(CoreFacts facts, LocalDate day, Findings findings) {
        Instant deadline = facts.site().endOf(day);
        Optional<Instant> shipped = facts.history().firstShipped();
        if (shipped.filter(deadline::isAfter).isPresent()) {
            return;
        }
        if (facts.asOf().isBefore(deadline)) {
            findings.changesAt(deadline);
            return;
        }
        String was =
                shipped.map(at -> "shipped on " + facts.site().dayOf(at)).orElse("not shipped");
        findings.add(
                facts.finding(rule(), "due by " + day + ", " + was, "due by " + day + ", " + was));
    }
}
