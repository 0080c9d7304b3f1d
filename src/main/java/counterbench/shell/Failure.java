package counterbench.shell;

import counterbench.shared.Interrupted;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.StoreUnusable;
import counterbench.shared.Visible;
import java.io.InterruptedIOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * What a person is told when a command did not get through.
 *
 * @param lines the messages, hidden characters shown
 */
record Failure(Status status, List<String> lines) {
    private static final int DEEPEST = 50;

    /** What something thrown means; the frameworks in between may have wrapped it. */
    static Failure of(Throwable thrown) {
        Throwable cause = thrown;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            Failure known = known(cause);
            if (known != null) {
                return known;
            }
            cause = cause.getCause();
        }
        return new Failure(
                Status.UNUSABLE,
                List.of(
                        "internal error: "
                                + Visible.text(String.valueOf(innermost(thrown)))
                                + " (run it again with --debug to see where, and tell whoever"
                                + " looks after the program)"));
    }

    private static @Nullable Failure known(Throwable thrown) {
        if (thrown instanceof Refused refused) {
            return new Failure(
                    Status.REFUSED, refused.problems().stream().map(Problem::message).toList());
        }
        if (thrown instanceof UsageError usage) {
            return new Failure(Status.USAGE, usage.messages());
        }
        if (thrown instanceof StoreUnusable unusable) {
            return new Failure(
                    Status.UNUSABLE, List.of(Visible.text(String.valueOf(unusable.getMessage()))));
        }
        return isInterruption(thrown)
                ? new Failure(
                        Status.INTERRUPTED,
                        List.of("interrupted; what was not recorded yet is undone"))
                : null;
    }

    private static boolean isInterruption(Throwable thrown) {
        return thrown instanceof Interrupted
                || thrown instanceof InterruptedException
                || thrown instanceof InterruptedIOException
                || thrown instanceof CancellationException;
    }

    private static Throwable innermost(Throwable thrown) {
        Throwable inner = thrown;
        for (int depth = 0; inner.getCause() != null && depth < DEEPEST; depth++) {
            inner = inner.getCause();
        }
        return inner;
    }
}
