package counterbench;

import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.home.Surroundings;
import counterbench.shell.Circumstances;
import counterbench.shell.PlainDesk;
import counterbench.shell.Runner;
import counterbench.shell.Status;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;

/** The whole program as it is put together, with a home of its own, typed at line by line. */
public final class TypedProgram implements AutoCloseable {
    /** A command line that sets up a first site. */
    public static final String SETUP =
            "setup --site NORTH --name \"North garage\" --zone America/Chicago --currency USD"
                    + " --lead Ada";

    private final Map<String, String> variables = new HashMap<>();
    private final Path home;
    private final InstantSource clock;
    private AnnotationConfigApplicationContext parts;

    private TypedProgram(Path home, Map<String, String> variables, InstantSource clock) {
        this.home = home;
        this.clock = clock;
        this.variables.putAll(variables);
        this.variables.put("COUNTERBENCH_HOME", home.toString());
        this.parts = start();
    }

    /** With a new, empty store. */
    public static TypedProgram withNew(TestStores kind) {
        StoreAddress address = kind.address();
        return kind == TestStores.H2
                ? at(TestStores.folder(address))
                : new TypedProgram(
                        newFolder(),
                        Map.of("COUNTERBENCH_STORE", address.url()),
                        InstantSource.system());
    }

    /** In a home folder. */
    public static TypedProgram at(Path home) {
        return at(home, InstantSource.system());
    }

    /** In a home folder, by some clock. */
    public static TypedProgram at(Path home, InstantSource clock) {
        return new TypedProgram(home, Map.of(), clock);
    }

    /** In another shell with the same home and store. */
    public TypedProgram another() {
        return new TypedProgram(home, variables, clock);
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("counterbench-test");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private AnnotationConfigApplicationContext start() {
        return Counterbench.start(new Surroundings(variables, home), clock);
    }

    /** The home folder. */
    public Path home() {
        return home;
    }

    /** Starts it again, with an environment variable set; nobody is signed in any more. */
    public TypedProgram again(String variable, String value) {
        variables.put(variable, value);
        parts.close();
        parts = start();
        return this;
    }

    /** Makes something of the program's own. */
    public <T> T part(Class<T> type) {
        return parts.getBean(type);
    }

    /** Runs one line, with lines that answer what it asks. */
    public Output type(String line, String... answers) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        PlainDesk desk =
                new PlainDesk(
                        part(Circumstances.class),
                        new BufferedReader(new StringReader(String.join("\n", answers))),
                        new PrintWriter(out),
                        new PrintWriter(err),
                        PlainDesk.View.NONE);
        Status status = part(Runner.class).run(line, desk);
        return new Output(status, out.toString(), err.toString());
    }

    /** Runs one line that must get through, and gives its results. */
    public String done(String line, String... answers) {
        Output output = type(line, answers);
        if (output.status() != Status.DONE) {
            throw new AssertionError(line + " ended with " + output);
        }
        return output.out();
    }

    /** What came of a line. */
    public record Output(Status status, String out, String err) {
        /** Messages as lines. */
        public List<String> messages() {
            return err.lines().toList();
        }

        /** Everything that was written. */
        public String all() {
            return out + err;
        }
    }

    @Override
    public void close() {
        parts.close();
    }
}
