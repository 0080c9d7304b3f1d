package counterbench.acts.scan;

import counterbench.acts.CoreCase;
import counterbench.acts.Situation;
import counterbench.acts.bench.FitState;
import counterbench.acts.bench.Progress;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Minutes;
import counterbench.stock.Use;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** How an act of the loop is acknowledged once it is recorded. */
public final class Acknowledged {
    private Acknowledged() {}

    /**
     * The words.
     *
     * @param told what the act was
     * @param facts what it recorded
     * @param after how things stand now
     */
    public static String words(String told, List<FactRow> facts, String job, Situation after) {
        FactRow first = facts.get(0);
        if (first.kind() == FactKind.MARKS) {
            return told + read(Objects.requireNonNull(first.text("step")), facts, job, after);
        }
        boolean ofVehicle =
                first.kind() == FactKind.USES
                        && !Use.Condition.ON_CORE.word().equals(first.text("condition"));
        return ofVehicle
                ? told + onVehicle(Objects.requireNonNull(first.text("part")), job, after)
                : told + ofCore(facts, after);
    }

    /** What changed about a core: until when it drains, or how many plugs it has. */
    private static String ofCore(List<FactRow> facts, Situation after) {
        return facts.stream()
                .filter(fact -> fact.kind() == FactKind.CORES)
                .map(fact -> ofCore(fact, after))
                .collect(Collectors.joining());
    }

    private static String ofCore(FactRow fact, Situation after) {
        CoreCase core = after.core(Objects.requireNonNull(fact.text("core")));
        String event = fact.text("event");
        if (CoreEvent.Kind.DRAIN_BEGUN.word().equals(event)) {
            return core.drainOver(after.now())
                    .map(over -> " until " + after.site().wallTime(Minutes.over(over)))
                    .orElse("");
        }
        boolean plugging =
                CoreEvent.Kind.PLUGGED.word().equals(event)
                        || CoreEvent.Kind.UNPLUGGED.word().equals(event);
        return plugging ? ", " + core.core().plugs() + ofWanted(core) + " plugs" : "";
    }

    private static String ofWanted(CoreCase core) {
        return core.terms().map(terms -> " of " + terms.plugs()).orElse("");
    }

    private static String read(String step, List<FactRow> facts, String job, Situation after) {
        return Progress.of(after.job(job)).step(step).map(s -> s.told(facts)).orElse("");
    }

    private static String onVehicle(String part, String job, Situation after) {
        return FitState.told(after.job(job), after.now(), part);
    }
}
