package counterbench.cores;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The drain periods of one core.
 *
 * <p>A period runs from a begin to the next end. A begin while one is open replaces it, an end with
 * none open is ignored, a begin without an end is no period. Draining counts until the core was
 * closed: until the first plug after the last unplugging, or the first plug at all where none was
 * removed. Those that count are joined where they touch.
 *
 * @param logged every ended period, in order of time
 * @param counted those that count, joined, in order of time
 */
public record DrainPeriods(List<DrainPeriod> logged, List<DrainPeriod> counted) {
    public DrainPeriods {
        logged = List.copyOf(logged);
        counted = List.copyOf(counted);
    }

    /** The periods that a core's facts make, which stand in {@link CoreEvent#ORDER}. */
    static DrainPeriods of(List<CoreEvent> ordered) {
        List<DrainPeriod> logged = logged(ordered);
        Optional<Instant> closed = closedAt(ordered);
        return new DrainPeriods(
                logged,
                joined(
                        logged.stream()
                                .filter(p -> closed.filter(p.ended()::isAfter).isEmpty())
                                .toList()));
    }

    /** The length of the longest period that counts; none where no period counts. */
    public Optional<Duration> longest() {
        return counted.stream().map(DrainPeriod::length).max(Comparator.naturalOrder());
    }

    /** The periods as they cover time: where two touch or overlap, they are one. */
    public static List<DrainPeriod> joined(Collection<DrainPeriod> periods) {
        List<DrainPeriod> joined = new ArrayList<>();
        periods.stream()
                .sorted(Comparator.comparing(DrainPeriod::begun))
                .forEach(next -> append(joined, next));
        return List.copyOf(joined);
    }

    private static void append(List<DrainPeriod> joined, DrainPeriod next) {
        int last = joined.size() - 1;
        if (last >= 0 && next.touches(joined.get(last))) {
            joined.set(last, joined.get(last).joinedWith(next));
        } else {
            joined.add(next);
        }
    }

    private static List<DrainPeriod> logged(List<CoreEvent> ordered) {
        List<DrainPeriod> logged = new ArrayList<>();
        Instant begun = null;
        for (CoreEvent event : ordered) {
            if (event.kind() == CoreEvent.Kind.DRAIN_BEGUN) {
                begun = event.at();
            } else if (event.kind() == CoreEvent.Kind.DRAIN_ENDED && begun != null) {
                logged.add(new DrainPeriod(begun, event.at()));
                begun = null;
            }
        }
        return logged;
    }

    /** When the drain period began that is open after facts in {@link CoreEvent#ORDER}. */
    static Optional<Instant> openAfter(Stream<CoreEvent> ordered) {
        return ordered.filter(e -> isDrain(e.kind()))
                .reduce((earlier, later) -> later)
                .filter(last -> last.kind() == CoreEvent.Kind.DRAIN_BEGUN)
                .map(CoreEvent::at);
    }

    private static boolean isDrain(CoreEvent.Kind kind) {
        return kind == CoreEvent.Kind.DRAIN_BEGUN || kind == CoreEvent.Kind.DRAIN_ENDED;
    }

    private static Optional<Instant> closedAt(List<CoreEvent> ordered) {
        @Nullable Instant closed = null;
        for (CoreEvent event : ordered) {
            if (event.kind() == CoreEvent.Kind.UNPLUGGED) {
                closed = null;
            } else if (event.kind() == CoreEvent.Kind.PLUGGED && closed == null) {
                closed = event.at();
            }
        }
        return Optional.ofNullable(closed);
    }
}
