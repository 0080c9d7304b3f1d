package counterbench.shell;

import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** The terminal on which the program was started, without the weight of a terminal library. */
final class SystemTerminal {
    private static final int USUAL_WIDTH = 80;

    private SystemTerminal() {}

    /** Whether both input and output are one. */
    static boolean isThere() {
        return console().isPresent();
    }

    @SuppressWarnings("SystemConsoleNull") // both cases are asked for
    private static Optional<Console> console() {
        return Optional.ofNullable(System.console()).filter(SystemTerminal::isTerminal);
    }

    /** Since Java 22 there always is a console, and it must be asked. */
    private static boolean isTerminal(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException beforeJava22) {
            return true;
        }
    }

    /** A line typed unseen. */
    static @Nullable String secret(String prompt) {
        return console()
                .map(console -> console.readPassword("%s", prompt))
                .map(String::new)
                .orElse(null);
    }

    /** How many characters fit into a line, as the terminal driver says. */
    static int width() {
        try {
            Process stty =
                    new ProcessBuilder("stty", "size")
                            .redirectInput(new File("/dev/tty"))
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            String size =
                    new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            int columns = Integer.parseInt(size.substring(size.indexOf(' ') + 1).strip());
            return stty.waitFor(1, TimeUnit.SECONDS) && columns > 0 ? columns : USUAL_WIDTH;
        } catch (IOException | RuntimeException | InterruptedException e) {
            return USUAL_WIDTH;
        }
    }
}
