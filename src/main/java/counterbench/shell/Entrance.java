package counterbench.shell;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jline.utils.Signals;

/**
 * Where the process comes in. Words are one command; {@code @file} and a pipe are commands line by
 * line; a terminal without words is the shell.
 */
public final class Entrance {
    private final Runner runner;
    private final Circumstances circumstances;
    private final Supplier<? extends Callable<Status>> shell;

    /**
     * @param shell the loop that talks with a person, made only when it is wanted
     */
    public Entrance(
            Runner runner,
            Circumstances circumstances,
            Supplier<? extends Callable<Status>> shell) {
        this.runner = runner;
        this.circumstances = circumstances;
        this.shell = shell;
    }

    /** Does what the process was started for. */
    public Status enter(List<String> arguments) {
        List<String> words = new ArrayList<>(arguments);
        if (Runner.takeDebug(words)) {
            circumstances.session().debug();
        }
        try {
            boolean terminal = SystemTerminal.isThere();
            return words.isEmpty() && terminal
                    ? shell.get().call()
                    : enter(words, plainDesk(terminal));
        } catch (Exception e) {
            return notEntered(e);
        }
    }

    private Status enter(List<String> words, PlainDesk desk) throws IOException {
        Signals.register("INT", () -> interrupt(desk));
        if (words.isEmpty()) {
            return new Script(runner, desk).run(desk::next, "standard input");
        }
        return words.size() == 1 && words.get(0).startsWith("@")
                ? file(words.get(0).substring(1), desk)
                : runner.run(words, desk);
    }

    private Status file(String name, PlainDesk desk) {
        try (BufferedReader lines = Files.newBufferedReader(Path.of(name))) {
            return new Script(runner, desk).run(lines::readLine, name);
        } catch (IOException | InvalidPathException e) {
            desk.err().println("script \"" + name + "\": " + unread(name, e));
            desk.err().flush();
            return Status.USAGE;
        }
    }

    private static String unread(String name, Exception thrown) {
        if (thrown instanceof NoSuchFileException || thrown instanceof InvalidPathException) {
            return "there is no such file; say its path from " + Path.of("").toAbsolutePath();
        }
        if (thrown instanceof CharacterCodingException) {
            return "it is not text in UTF-8; save it as that";
        }
        return Files.isDirectory(Path.of(name))
                ? "it is a folder; name the file in it"
                : "it cannot be read; see who may read it";
    }

    /** The first Ctrl-C asks the work to stop where it is safe; nothing else waits for a second. */
    private void interrupt(PlainDesk desk) {
        if (desk.isWaiting() || circumstances.stop().isAsked()) {
            System.exit(Status.INTERRUPTED.code());
        }
        circumstances.stop().ask();
    }

    private PlainDesk plainDesk(boolean terminal) {
        return new PlainDesk(
                circumstances,
                new BufferedReader(
                        new InputStreamReader(
                                new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8)),
                new ResultWriter(FileDescriptor.out),
                new ResultWriter(FileDescriptor.err),
                terminal
                        ? new PlainDesk.View(true, SystemTerminal::width, SystemTerminal::secret)
                        : PlainDesk.View.NONE);
    }

    private Status notEntered(Exception thrown) {
        PrintWriter err = new ResultWriter(FileDescriptor.err);
        Failure failure = Failure.of(thrown);
        failure.lines().forEach(err::println);
        if (circumstances.session().isDebugging()) {
            thrown.printStackTrace(err);
        }
        err.flush();
        return failure.status();
    }
}
