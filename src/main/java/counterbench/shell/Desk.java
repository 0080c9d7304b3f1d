package counterbench.shell;

import counterbench.shared.Refused;
import counterbench.shell.print.Paragraph;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.shell.core.InputReader;

/** Where a person or a script sits: what is written goes there, and answers come from there. */
public abstract class Desk implements InputReader {
    private final Circumstances circumstances;
    private final PrintWriter out;
    private final PrintWriter err;

    protected Desk(Circumstances circumstances, PrintWriter out, PrintWriter err) {
        this.circumstances = circumstances;
        this.out = out;
        this.err = err;
    }

    /** What is around it. */
    public final Circumstances circumstances() {
        return circumstances;
    }

    /** For results. */
    public final PrintWriter out() {
        return out;
    }

    /** For messages to people. */
    public final PrintWriter err() {
        return err;
    }

    /** Whether a person looks at the results on a terminal. */
    public abstract boolean isScreen();

    /** How many characters fit into a line; very many where nobody looks. */
    public abstract int width();

    /** Writes a paragraph, broken between words where somebody looks at it. */
    final void print(String text, PrintWriter to) {
        if (isScreen()) {
            Paragraph.lines(text, width()).forEach(to::println);
        } else {
            to.println(text);
        }
    }

    /**
     * A line that somebody types or scans.
     *
     * @return null where no more will come
     */
    public abstract @Nullable String ask(String prompt);

    /** As {@link #ask}, without showing it where that can be helped. */
    public abstract @Nullable String askSecretly(String prompt);

    /**
     * Lines that lie there behind those that the one command of this process asked for, and that
     * nobody will read. None where a script goes on with them.
     */
    public List<String> unread() {
        return List.of();
    }

    @Override
    public final String readInput(String prompt) {
        return given(ask(prompt));
    }

    @Override
    public final char[] readPassword(String prompt) {
        return given(askSecretly(prompt)).toCharArray();
    }

    private static String given(@Nullable String line) {
        if (line == null) {
            throw new Refused("an answer", "the input has ended", "give it one more line");
        }
        return line;
    }
}
