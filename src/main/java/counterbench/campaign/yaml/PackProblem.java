package counterbench.campaign.yaml;

import counterbench.shared.Problem;
import java.util.Comparator;
import java.util.Objects;

/**
 * One thing that is wrong, or doubtful, in a pack.
 *
 * @param file the pack's file
 * @param line the line, from 1
 * @param column the column, from 1
 * @param what what stands there, the offending value quoted
 * @param why why it cannot stand
 * @param todo what to write instead; empty where the reason says it all
 */
public record PackProblem(String file, int line, int column, String what, String why, String todo) {
    /** As one reads the file. */
    public static final Comparator<PackProblem> IN_ORDER =
            Comparator.comparingInt(PackProblem::line).thenComparingInt(PackProblem::column);

    public PackProblem {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(todo, "todo");
    }

    /** The same as a refusal of the program. */
    public Problem asProblem() {
        return new Problem("%s:%d:%d: %s".formatted(file, line, column, what), why, todo);
    }

    /** The line that a person sees: {@code pump.yaml:14:9: after "cald": no step …; did you …}. */
    public String message() {
        return asProblem().message();
    }
}
