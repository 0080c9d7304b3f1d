package counterbench.oracle;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The drain periods of one core that count: ended by the first plug after the last unplugging. */
final class DrainPeriods {

    private record Period(Instant begun, Instant ended) {}

    private DrainPeriods() {}

    /** The longest period after joining those that touch; empty where none counts. */
    static Optional<Duration> longest(Core core) {
        Optional<Instant> plugged = decidingPlug(core);
        List<Period> joined = new ArrayList<>();
        for (Period period : periods(core)) {
            if (plugged.isPresent() && period.ended().isAfter(plugged.get())) {
                continue;
            }
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).ended().equals(period.begun())) {
                joined.set(last, new Period(joined.get(last).begun(), period.ended()));
            } else {
                joined.add(period);
            }
        }
        return joined.stream()
                .map(p -> Duration.between(p.begun(), p.ended()))
                .max(Duration::compareTo);
    }

    private static List<Period> periods(Core core) {
        List<Period> periods = new ArrayList<>();
        Instant open = null;
        for (Facts.CoreEvent event : core.events) {
            if (event.event().equals("drain-begun")) {
                open = event.at();
            } else if (event.event().equals("drain-ended") && open != null) {
                periods.add(new Period(open, event.at()));
                open = null;
            }
        }
        return periods;
    }

    private static Optional<Instant> decidingPlug(Core core) {
        Optional<Instant> plug = Optional.empty();
        for (Facts.CoreEvent event : core.events) {
            if (event.event().equals("unplugged")) {
                plug = Optional.empty();
            } else if (event.event().equals("plugged") && plug.isEmpty()) {
                plug = Optional.of(event.at());
            }
        }
        return plug;
    }
}
