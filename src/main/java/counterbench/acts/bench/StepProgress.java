package counterbench.acts.bench;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.facts.FactRow;
import counterbench.procedure.Mark;
import counterbench.procedure.rules.StepMarks;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** How far one step has come. */
public record StepProgress(Step step, StepMarks marks) {
    /** Whether everything that it asks is marked; whether it is within limits is another matter. */
    public boolean isComplete() {
        return marks.firstComplete(step).isPresent();
    }

    /** Whether a number is wanted for it. */
    public boolean isMeasured() {
        return step.kind() == StepKind.TORQUE
                || step.kind() == StepKind.READING
                || step.kind() == StepKind.WAIT;
    }

    /** The first fastener of a torque step that has no reading. */
    public OptionalInt nextFastener() {
        return IntStream.rangeClosed(1, step.fasteners())
                .filter(fastener -> !marks.latestByFastener().containsKey(fastener))
                .findFirst();
    }

    /** The marks that hold now: the latest, of a torque step the latest of each fastener. */
    public List<Mark> latest() {
        return switch (step.kind()) {
            case TORQUE -> List.copyOf(marks.latestByFastener().values());
            case READING -> marks.latestReading().stream().toList();
            case WAIT -> marks.latestWait().stream().toList();
            case SAFETY, SIGN -> last().stream().toList();
        };
    }

    private Optional<Mark> last() {
        List<Mark> all = marks.all();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** What was read, in words: {@code 47.4 46.8 47.1 N·m}, {@code 5.5 min}; empty for a sign. */
    public String read() {
        return ReadingWords.of(step, latest());
    }

    /** What rows have marked of it: {@code : 47.4 46.8 N·m, 2 of 3 fasteners read}. */
    public String told(List<FactRow> rows) {
        String read = ReadingWords.ofRows(step, rows);
        String fasteners =
                step.kind() == StepKind.TORQUE && step.fasteners() > 1
                        ? ", "
                                + marks.latestByFastener().size()
                                + " of "
                                + step.fasteners()
                                + " fasteners read"
                        : "";
        return (read.isEmpty() ? "" : ": " + read) + fasteners;
    }
}
