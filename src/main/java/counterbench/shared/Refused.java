package counterbench.shared;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown where what was asked cannot be done and nothing was changed; bears every reason. */
public final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public Refused(List<Problem> problems) {
        super(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public Refused(String asked, String because, String todo) {
        this(List.of(new Problem(asked, because, todo)));
    }

    /** Every reason, in order. */
    public List<Problem> problems() {
        return problems;
    }
}
