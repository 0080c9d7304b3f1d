package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.procedure.Mark;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The marks of one step.
 *
 * @param all in order of time, then row; the last is the latest
 */
public record StepMarks(List<Mark> all) {
    private static final Comparator<Mark> BY_TIME =
            Comparator.comparing(Mark::at).thenComparing(Mark::address);

    public StepMarks {
        all = all.stream().sorted(BY_TIME).toList();
    }

    /** When the step was first marked. */
    public Optional<Instant> first() {
        return all.stream().map(Mark::at).findFirst();
    }

    /** The latest mark that bears a value. */
    public Optional<Mark> latestReading() {
        return latest(all.stream().filter(m -> m.value() != null).toList());
    }

    /** The latest mark that bears a length of time. */
    public Optional<Mark> latestWait() {
        return latest(all.stream().filter(m -> m.minutes() != null).toList());
    }

    /** The latest reading of each fastener. */
    public SortedMap<Integer, Mark> latestByFastener() {
        SortedMap<Integer, Mark> latest = new TreeMap<>();
        all.stream().filter(m -> m.value() != null).forEach(m -> latest.put(m.fastener(), m));
        return latest;
    }

    /** When all fasteners of a torque step had been read, or another step was first marked. */
    public Optional<Instant> firstComplete(Step step) {
        if (step.kind() != StepKind.TORQUE) {
            return first();
        }
        Collection<Instant> read = firstByFastener().values();
        return read.size() < step.fasteners()
                ? Optional.empty()
                : read.stream().max(Comparator.naturalOrder());
    }

    private SortedMap<Integer, Instant> firstByFastener() {
        SortedMap<Integer, Instant> first = new TreeMap<>();
        all.stream()
                .filter(m -> m.value() != null)
                .forEach(m -> first.putIfAbsent(m.fastener(), m.at()));
        return first;
    }

    private static Optional<Mark> latest(List<Mark> marks) {
        return marks.isEmpty() ? Optional.empty() : Optional.of(marks.get(marks.size() - 1));
    }
}
