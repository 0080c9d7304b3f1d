package counterbench.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One removed unit with its events, in the order in which facts of one instant stand. */
final class Core {

    final String tag;
    final String job;
    final String serial;
    final String part;
    final List<Facts.CoreEvent> events;
    final List<Answer> answers = new ArrayList<>();

    /** What the return centre said of this core: received, accepted or rejected. */
    record Answer(String event, Instant at, int line) {}

    Core(String tag, List<Facts.CoreEvent> unordered) {
        this.tag = tag;
        Facts.CoreEvent removed =
                unordered.stream()
                        .filter(e -> e.event().equals("removed"))
                        .findFirst()
                        .orElseThrow();
        job = removed.job();
        serial = removed.serial();
        part = removed.part();
        events =
                unordered.stream()
                        .sorted(
                                Comparator.comparing(Facts.CoreEvent::at)
                                        .thenComparing(Core::rank)
                                        .thenComparing(Facts.CoreEvent::line))
                        .toList();
        events.stream()
                .filter(e -> List.of("received", "accepted", "rejected").contains(e.event()))
                .forEach(e -> answers.add(new Answer(e.event(), e.at(), e.line())));
    }

    String job() {
        return job;
    }

    List<Facts.CoreEvent> of(String event) {
        return events.stream().filter(e -> e.event().equals(event)).toList();
    }

    Optional<Instant> first(String event) {
        return of(event).stream().map(Facts.CoreEvent::at).findFirst();
    }

    Optional<Instant> firstAnswer() {
        return answers.stream().map(Answer::at).min(Comparator.naturalOrder());
    }

    boolean packedShippedOrAcknowledged() {
        return first("packed").isPresent()
                || first("shipped").isPresent()
                || firstAnswer().isPresent();
    }

    /** The shipment to which it was last added and not taken off; empty where there is none. */
    String shipment() {
        String current = "";
        for (Facts.CoreEvent event : events) {
            if (event.event().equals("added")) {
                current = event.shipment();
            } else if (event.event().equals("taken-off")
                    && (event.shipment().isEmpty() || event.shipment().equals(current))) {
                current = "";
            }
        }
        return current;
    }

    private static int rank(Facts.CoreEvent event) {
        return switch (event.event()) {
            case "drain-ended" -> 0;
            case "drain-begun" -> 1;
            default -> 2;
        };
    }
}
