package counterbench.procedure.rules;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Step;
import counterbench.judgement.Rule;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/**
 * A step was first marked before a step that comes first was first complete. The same time is in
 * order. A step that comes first and was never complete, does not apply or cannot be told to apply
 * is no hindrance here; other rules speak of it.
 */
public final class StepEarly extends StepJudge {
    public StepEarly() {
        super(Rule.STEP_EARLY);
    }

    @Override
    Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks) {
        return marks.first().flatMap(first -> judge(facts, step, first));
    }

    private static Optional<Fault> judge(ProcedureFacts facts, Step step, Instant first) {
        List<Completion> later =
                step.after().stream()
                        .flatMap(before -> completion(facts, before).stream())
                        .filter(before -> first.isBefore(before.at()))
                        .toList();
        Site site = facts.judged().site();
        return later.isEmpty()
                ? Optional.empty()
                : Optional.of(new Fault(message(first, later, site), evidence(first, later)));
    }

    private static String message(Instant first, List<Completion> later, Site site) {
        return later.stream()
                .map(before -> message(first, before, site))
                .collect(joining(site.wallTime(first)));
    }

    /** The site's clock shows minutes. */
    private static String message(Instant first, Completion before, Site site) {
        long seconds = Duration.between(first, before.at()).toSeconds();
        return before.step()
                + " complete at "
                + site.wallTime(before.at())
                + (seconds < 60 ? " (" + seconds + " s later)" : "");
    }

    private static String evidence(Instant first, List<Completion> later) {
        return later.stream()
                .map(before -> before.step() + " complete at " + before.at())
                .collect(joining(first.toString()));
    }

    private static Collector<CharSequence, ?, String> joining(String first) {
        return Collectors.joining(", ", "marked at " + first + ", but ", "");
    }

    private record Completion(String step, Instant at) {}

    private static Optional<Completion> completion(ProcedureFacts facts, String id) {
        return facts.step(id)
                .filter(step -> facts.holds(step) == Holds.YES)
                .flatMap(step -> facts.marksOf(id).firstComplete(step))
                .map(at -> new Completion(id, at));
    }
}
