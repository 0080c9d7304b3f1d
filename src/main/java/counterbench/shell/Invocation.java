package counterbench.shell;

import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.people.Person;
import counterbench.people.Pin;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.Visible;
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Printer;
import counterbench.shell.print.Rows;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One run of a command: what was said, where results go, and what is around it. */
public final class Invocation implements AutoCloseable {
    /** Signs somebody in, in scripts. */
    public static final String PERSON_VARIABLE = "COUNTERBENCH_PERSON";

    /** The PIN of whoever signs in, in scripts. */
    public static final String PIN_VARIABLE = "COUNTERBENCH_PIN";

    /** Chooses the site, in scripts. */
    public static final String SITE_VARIABLE = "COUNTERBENCH_SITE";

    private final String commandName;
    private final String line;
    private final Values values;
    private final Desk desk;
    private @Nullable ProgressLine progress;

    Invocation(String commandName, String line, Values values, Desk desk) {
        this.commandName = commandName;
        this.line = line;
        this.values = values;
        this.desk = desk;
    }

    /** The command's name, with which refusals may begin. */
    public String commandName() {
        return commandName;
    }

    /** The command line, as the journal says where an entry came from. */
    public String line() {
        return line;
    }

    /** The value of something that must be said. */
    public <T> T get(Parameter<T> parameter) {
        return find(parameter).orElseThrow();
    }

    /** The value of something that may be said. */
    public <T> Optional<T> find(Parameter<T> parameter) {
        return values.find(parameter);
    }

    /** All values of something that may be said more than once. */
    public <T> List<T> all(Parameter<T> parameter) {
        return values.all(parameter);
    }

    /** Whether it was said. */
    public boolean has(Parameter<?> parameter) {
        return !values.all(parameter).isEmpty();
    }

    /** Where results go. */
    public PrintWriter out() {
        return desk.out();
    }

    /** Writes a line of results, with hidden characters shown. */
    public void print(String line) {
        clearProgress();
        desk.print(Visible.text(line), desk.out());
    }

    /** Says something to the person, which is no result. */
    public void tell(String line) {
        clearProgress();
        desk.out().flush();
        desk.print(Visible.text(line), desk.err());
        desk.err().flush();
    }

    /** Rows in the format that the person chose. Close them when all are written. */
    public Rows rows(Column... columns) {
        clearProgress();
        return new Printer(
                        desk.out(),
                        desk.isScreen(),
                        desk.width(),
                        desk.circumstances().stop()::check)
                .rows(format(), List.of(columns));
    }

    /** The format of rows that the person chose. */
    public Format format() {
        return find(Options.FORMAT).orElse(Format.TABLE);
    }

    /** Shows how long work goes on, and stops it when the person asks. */
    public Progress progress() {
        if (progress == null) {
            progress =
                    new ProgressLine(
                            desk.err(),
                            desk.isScreen(),
                            desk.width(),
                            desk.circumstances().stop(),
                            System::nanoTime);
        }
        return progress;
    }

    private void clearProgress() {
        if (progress != null) {
            progress.clear();
        }
    }

    /** A line that the person types or scans; empty where no more will come. */
    public Optional<String> ask(String prompt) {
        clearProgress();
        desk.out().flush();
        return Optional.ofNullable(desk.ask(prompt));
    }

    /** Lines that lie behind those that were asked for, and that nobody will read. */
    public List<String> unread() {
        return desk.unread();
    }

    /** The PIN of whoever signs in: what scripts say in the environment, or else typed unseen. */
    public Pin pin(String prompt) {
        return surroundings()
                .variable(PIN_VARIABLE)
                .map(Pin::new)
                .orElseGet(() -> typedPin(prompt, "type it, or set " + PIN_VARIABLE));
    }

    /**
     * A PIN that is typed unseen, whatever the environment says.
     *
     * @param todo what to do where none is typed
     */
    public Pin typedPin(String prompt, String todo) {
        clearProgress();
        desk.out().flush();
        String typed = desk.askSecretly(prompt);
        if (typed == null || typed.isBlank()) {
            throw new Refused("PIN", "none was given", todo);
        }
        return new Pin(typed);
    }

    /**
     * Whoever acts: the person signed in here, with the roles of now, or the one whom the
     * environment names.
     *
     * @throws Refused if nobody is, or the PIN is wrong
     */
    public Person person() {
        return session()
                .person()
                .map(desk.circumstances().signIn().get()::stillThere)
                .orElseGet(this::signedInByVariable);
    }

    private Person signedInByVariable() {
        String name =
                surroundings()
                        .variable(PERSON_VARIABLE)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "this act",
                                                "nobody is signed in",
                                                "type sign-in NAME, or set "
                                                        + PERSON_VARIABLE
                                                        + " and "
                                                        + PIN_VARIABLE));
        Person person =
                desk.circumstances().signIn().get().signIn(name, pin("PIN of " + name + ": "));
        session().signIn(person);
        return person;
    }

    /** The site that is meant: as the line says, as chosen here, or as the environment says. */
    public Optional<String> site() {
        return find(Options.SITE).or(desk.circumstances()::site);
    }

    /** The time now, from the one clock of the program. */
    public Instant now() {
        return desk.circumstances().clock().instant();
    }

    /** Who sits here. */
    public Session session() {
        return desk.circumstances().session();
    }

    /** What the operating system says. */
    public Surroundings surroundings() {
        return desk.circumstances().surroundings();
    }

    /** The home folder. */
    public Home home() {
        return desk.circumstances().home().get();
    }

    /** Whether a person looks at the results on a terminal. */
    public boolean isScreen() {
        return desk.isScreen();
    }

    /** How many characters fit into a line; very many where nobody looks. */
    public int width() {
        return desk.width();
    }

    /** Refuses the command line for a reason that its options alone do not show. */
    public UsageError wrong(String message) {
        return new UsageError(message);
    }

    @Override
    public void close() {
        clearProgress();
        desk.out().flush();
    }
}
