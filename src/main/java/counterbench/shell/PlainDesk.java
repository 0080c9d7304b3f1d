package counterbench.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A desk of plain streams: pipes, files, or a terminal on which one command is run. */
public final class PlainDesk extends Desk {
    private final BufferedReader in;
    private final View view;
    private volatile boolean waiting;
    private boolean script;

    public PlainDesk(
            Circumstances circumstances,
            BufferedReader in,
            PrintWriter out,
            PrintWriter err,
            View view) {
        super(circumstances, out, err);
        this.in = in;
        this.view = view;
    }

    /**
     * What is known of the terminal.
     *
     * @param screen whether there is one
     * @param width how many characters fit into its line, asked only when needed
     * @param secret reads a line unseen after a prompt; used only where there is a terminal
     */
    public record View(
            boolean screen, IntSupplier width, Function<String, @Nullable String> secret) {
        /** There is none. */
        public static final View NONE = new View(false, () -> Integer.MAX_VALUE, prompt -> null);
    }

    @Override
    public boolean isScreen() {
        return view.screen();
    }

    @Override
    public int width() {
        return view.width().getAsInt();
    }

    /** The next line of a script, which comes from where answers come from; null at the end. */
    public @Nullable String next() {
        script = true;
        return waiting(this::readLine);
    }

    /** Whether somebody is waited for, so that a Ctrl-C need not wait for anything. */
    public boolean isWaiting() {
        return waiting;
    }

    @Override
    public @Nullable String ask(String prompt) {
        if (view.screen()) {
            err().print(prompt);
            err().flush();
        }
        return waiting(this::readLine);
    }

    @Override
    public @Nullable String askSecretly(String prompt) {
        return view.screen() ? waiting(() -> view.secret().apply(prompt)) : waiting(this::readLine);
    }

    /** Waits for nobody: what a pipe does not hold yet is not there. */
    @Override
    public List<String> unread() {
        List<String> lines = new ArrayList<>();
        boolean more = !script && !view.screen();
        try {
            while (more && in.ready()) {
                String line = in.readLine();
                more = line != null;
                if (line != null && !line.isBlank()) {
                    lines.add(line);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the input cannot be read", e);
        }
        return lines;
    }

    private @Nullable String waiting(Supplier<@Nullable String> answer) {
        waiting = true;
        try {
            return answer.get();
        } finally {
            waiting = false;
        }
    }

    private @Nullable String readLine() {
        try {
            return in.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException("the input cannot be read", e);
        }
    }
}
