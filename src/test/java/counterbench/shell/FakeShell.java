package counterbench.shell;

import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.people.Person;
import counterbench.people.Pin;
import counterbench.people.Role;
import counterbench.people.SignIn;
import counterbench.shared.Refused;
import counterbench.shell.builtin.ExitCommand;
import counterbench.shell.builtin.HelpCommand;
import counterbench.shell.builtin.VersionCommand;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.CommandRegistry;

/** A shell in memory: commands, a clock that stands still, and streams that can be read. */
public final class FakeShell {
    /** Where the clock stands unless said otherwise. */
    public static final Instant NOW = Instant.parse("2026-03-05T20:00:00Z");

    private final CommandRegistry registry = new CommandRegistry();
    private final Session session = new Session();
    private final Stop stop = new Stop();
    private Surroundings surroundings = new Surroundings(Map.of(), Path.of("nowhere"));
    private Instant now = NOW;
    private SignIn signIn = new Ada();
    private PlainDesk.View view = PlainDesk.View.NONE;

    /** A shell with the commands about itself and these. */
    public FakeShell(BaseCommand... commands) {
        List.of(commands).forEach(registry::registerCommand);
        registry.registerCommand(new HelpCommand(this::commands));
        registry.registerCommand(new VersionCommand());
        registry.registerCommand(new ExitCommand());
    }

    private static final class Ada implements SignIn {
        @Override
        public Person signIn(String name, Pin pin) {
            if (name.equals("Ada") && pin.typed().toString().equals("2468")) {
                return new Person("Ada", java.util.Set.of(Role.LEAD));
            }
            throw new Refused(
                    "sign-in of \"" + name + "\"", "name and PIN do not fit", "try again");
        }

        @Override
        public Person stillThere(Person person) {
            return person;
        }
    }

    /** The same, with an environment variable. */
    public FakeShell with(String variable, String value) {
        Map<String, String> variables = new java.util.HashMap<>(surroundings.variables());
        variables.put(variable, value);
        surroundings = new Surroundings(variables, surroundings.userHome());
        return this;
    }

    /** The same, at another time. */
    public FakeShell at(Instant time) {
        now = time;
        return this;
    }

    /** The same, looked at by a person on a terminal of that width. */
    public FakeShell onScreen(int width) {
        view = new PlainDesk.View(true, () -> width, prompt -> "2468");
        return this;
    }

    /** The same, where that person types these things unseen, one after the other, then nothing. */
    public FakeShell typingUnseen(String... secrets) {
        Iterator<String> typed = List.of(secrets).iterator();
        view = new PlainDesk.View(true, () -> 100, p -> typed.hasNext() ? typed.next() : null);
        return this;
    }

    /** All commands. */
    public Commands commands() {
        return new Commands(registry);
    }

    /** What is around the commands. */
    public Circumstances circumstances() {
        return new Circumstances(
                surroundings, () -> Home.of(surroundings), () -> now, session, stop, () -> signIn);
    }

    /** Runs one command, with lines that answer what it asks. */
    public Output run(List<String> words, String... answers) {
        return with(String.join("\n", answers), desk -> new Runner(commands()).run(words, desk));
    }

    /** Runs one line of text. */
    public Output line(String line, String... answers) {
        return with(String.join("\n", answers), desk -> new Runner(commands()).run(line, desk));
    }

    /** Runs a script whose lines are also the answers to what its commands ask. */
    public Output script(String... lines) {
        return with(
                String.join("\n", lines),
                desk -> {
                    try {
                        return new Script(new Runner(commands()), desk).run(desk::next, "script");
                    } catch (java.io.IOException e) {
                        throw new java.io.UncheckedIOException(e);
                    }
                });
    }

    private Output with(String input, java.util.function.Function<PlainDesk, Status> work) {
        StringWriter both = new StringWriter();
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        PlainDesk desk =
                new PlainDesk(
                        circumstances(),
                        new BufferedReader(new StringReader(input)),
                        new PrintWriter(new Twice(out, both)),
                        new PrintWriter(new Twice(err, both)),
                        view);
        Status status = work.apply(desk);
        return new Output(status, out.toString(), err.toString(), both.toString());
    }

    /** Who sits here. */
    public Session session() {
        return session;
    }

    /** Where Ctrl-C is felt. */
    public Stop stop() {
        return stop;
    }

    /**
     * What came of a run.
     *
     * @param screen both streams in the order of writing
     */
    public record Output(Status status, String out, String err, String screen) {
        /** Messages as lines. */
        public List<String> messages() {
            return err.lines().toList();
        }
    }

    /** Writes everything to two writers. */
    private static final class Twice extends java.io.FilterWriter {
        private final StringWriter second;

        Twice(StringWriter first, StringWriter second) {
            super(first);
            this.second = second;
        }

        @Override
        public void write(int c) {
            write(new char[] {(char) c}, 0, 1);
        }

        @Override
        public void write(char[] text, int from, int length) {
            ((StringWriter) out).write(text, from, length);
            second.write(text, from, length);
        }

        @Override
        public void write(String text, int from, int length) {
            ((StringWriter) out).write(text, from, length);
            second.write(text, from, length);
        }
    }
}
