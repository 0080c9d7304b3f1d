package counterbench.procedure.rules;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Step;
import counterbench.judgement.Rule;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

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
        List<String> later =
                step.after().stream()
                        .flatMap(before -> completion(facts, before).stream())
                        .filter(before -> first.isBefore(before.at()))
                        .map(before -> "%s complete at %s".formatted(before.step(), before.at()))
                        .toList();
        return later.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Fault("marked at " + first + ", but " + String.join(", ", later)));
    }

    private record Completion(String step, Instant at) {}

    private static Optional<Completion> completion(ProcedureFacts facts, String id) {
        return facts.step(id)
                .filter(step -> facts.holds(step) == Holds.YES)
                .flatMap(step -> facts.marksOf(id).firstComplete(step))
                .map(at -> new Completion(id, at));
    }
}
