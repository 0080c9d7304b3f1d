package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.judgement.SubjectKind;
import counterbench.review.Component;
import counterbench.review.FindingState;
import counterbench.review.JobFile;
import counterbench.review.JudgeComponent;
import counterbench.review.StatedFinding;
import counterbench.shared.Address;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The gate before a shipment leaves. Cores are judged as if they had been shipped, since some rules
 * judge only what was packed or sent, and a core that nobody packed must not slip through.
 */
final class ShipGate {
    private ShipGate() {}

    /** What stands against the shipping of some cores, by tag, then by rule. */
    static List<Objection> objections(
            Situation situation, String shipment, Collection<String> tags, Stamp stamp) {
        JudgeComponent judge =
                new JudgeComponent(situation.site(), situation.terms(), situation.now());
        List<Finding> stops = new ArrayList<>();
        for (Component component : situation.components()) {
            judge.judge(asIfShipped(component, shipment, tags, stamp)).findings().values().stream()
                    .flatMap(List::stream)
                    .filter(f -> f.rule().severity() == Severity.STOP)
                    .filter(f -> f.subject().kind() == SubjectKind.CORE)
                    .filter(f -> tags.contains(f.subject().name()))
                    .forEach(stops::add);
        }
        Map<String, CoreCase> cores = new HashMap<>();
        situation.cores().forEach(core -> cores.put(core.core().core(), core));
        return stops.isEmpty()
                ? List.of()
                : situation.directory().settlements().state(stops).stream()
                        .filter(stated -> stated.state() == FindingState.OPEN)
                        .map(StatedFinding::finding)
                        .map(
                                f ->
                                        new Objection(
                                                Objects.requireNonNull(
                                                        cores.get(f.subject().name())),
                                                f))
                        .toList();
    }

    private static Component asIfShipped(
            Component component, String shipment, Collection<String> tags, Stamp stamp) {
        List<JobFile> files =
                component.jobs().stream()
                        .map(file -> file.with(shipped(file, shipment, tags, stamp)))
                        .toList();
        return new Component(files, component.kits(), component.facts(), component.nextFact());
    }

    private static List<CoreEvent> shipped(
            JobFile file, String shipment, Collection<String> tags, Stamp stamp) {
        return file.cores().stream()
                .map(CoreEvent::core)
                .distinct()
                .filter(tags::contains)
                .map(tag -> shipped(tag, shipment, stamp))
                .toList();
    }

    private static CoreEvent shipped(String tag, String shipment, Stamp stamp) {
        return new CoreEvent(
                new Address(Long.MAX_VALUE, 1),
                tag,
                CoreEvent.Kind.SHIPPED,
                stamp.at(),
                null,
                null,
                null,
                null,
                null,
                shipment,
                null,
                stamp.by());
    }
}
