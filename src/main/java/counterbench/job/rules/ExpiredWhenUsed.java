package counterbench.job.rules;

import counterbench.job.Requirement;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.stock.Use;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A part with a shelf life was fitted new after the last usable day of its kit or lot; on that day
 * itself it is good. Every fitting is judged, also one that was taken off again. Where nobody knows
 * the day, nothing can be found.
 */
public final class ExpiredWhenUsed extends HardwareJudge {
    public ExpiredWhenUsed() {
        super(Rule.EXPIRED_WHEN_USED);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        SortedMap<String, SortedSet<String>> expired = new TreeMap<>();
        for (Use use : facts.goods().uses()) {
            Optional<Requirement> required = facts.requirements().of(use.part());
            if (use.condition() == Use.Condition.NEW
                    && required.map(Requirement::shelfLife).orElse(false)) {
                String part = facts.requirements().packPart(use.part());
                lateness(facts, use)
                        .ifPresent(
                                late ->
                                        expired.computeIfAbsent(part, p -> new TreeSet<>())
                                                .add(late));
            }
        }
        expired.forEach((part, late) -> judge(facts, part, String.join("; ", late), findings));
    }

    private static Optional<String> lateness(HardwareFacts facts, Use use) {
        LocalDate used = facts.judged().site().dayOf(use.at());
        return LastUsableDay.of(facts, use)
                .filter(last -> used.isAfter(last.day()))
                .map(l -> "%s was usable until %s, used %s".formatted(l.source(), l.day(), used));
    }

    private void judge(HardwareFacts facts, String part, String late, Findings findings) {
        find(facts, findings, part, facts.named(part) + " had expired: " + late, late);
    }
}
