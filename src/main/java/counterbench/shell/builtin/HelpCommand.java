package counterbench.shell.builtin;

import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Commands;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.ManualPage;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import counterbench.shell.UsageError;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Lists the commands, or shows the page of one. Does not open the store. */
public final class HelpCommand extends BaseCommand {
    private static final String CAUTION =
            "The maker's own procedure, local codes and licensed practice come first. What\n"
                    + "this tool computes is bookkeeping and never leave to drive.";
    private static final String SCRIPTS =
            """
            As arguments of the program, the words of a command run that one; @FILE and a
            pipe run commands line by line. There COUNTERBENCH_PERSON and
            COUNTERBENCH_PIN sign in, COUNTERBENCH_SITE chooses the site,
            COUNTERBENCH_HOME names the home folder. --debug shows where an error comes
            from.""";
    private static final Argument<String> WORDS =
            Argument.of("COMMAND", Readings.TEXT, "the command, one or two words")
                    .asOptional()
                    .asRepeatable();

    private final Argument<String> words;
    private final Supplier<Commands> commands;

    /**
     * @param commands all commands, of which this is one
     */
    public HelpCommand(Supplier<Commands> commands) {
        super(
                Manual.of("help", Group.EVERYBODY, "List the commands, or explain one")
                        .takes(WORDS.completedBy(begun -> nextWords(commands.get(), begun.words())))
                        .example("help")
                        .example("help kit receive"));
        this.words = WORDS;
        this.commands = commands;
    }

    private static List<String> nextWords(Commands commands, List<String> words) {
        List<String> before = words.isEmpty() ? words : words.subList(0, words.size() - 1);
        return commands.all().stream()
                .map(BaseCommand::words)
                .filter(name -> name.size() > before.size())
                .filter(name -> name.subList(0, before.size()).equals(before))
                .map(name -> name.get(before.size()))
                .distinct()
                .toList();
    }

    @Override
    protected Status run(Invocation in) {
        String name = String.join(" ", in.all(words));
        in.out().println(name.isEmpty() ? everything() : about(name));
        return Status.DONE;
    }

    private String about(String name) {
        return commands.get().named(name).map(BaseCommand::getHelp).orElseGet(() -> group(name));
    }

    private String group(String word) {
        List<BaseCommand> under = commands.get().under(word);
        if (under.isEmpty()) {
            throw new UsageError(commands.get().unknown(word));
        }
        return String.join("\n", lines(under));
    }

    private String everything() {
        return Stream.of(
                        Arrays.stream(Group.values()).flatMap(this::section),
                        Stream.of(
                                "help COMMAND explains one; COMMAND --help does the same.",
                                SCRIPTS,
                                "",
                                CAUTION))
                .flatMap(s -> s)
                .reduce((a, b) -> a + "\n" + b)
                .orElse("");
    }

    private Stream<String> section(Group group) {
        List<BaseCommand> of =
                commands.get().all().stream().filter(c -> c.manual().group() == group).toList();
        return of.isEmpty()
                ? Stream.of()
                : Stream.of(Stream.of(group.title()), lines(of).stream(), Stream.of(""))
                        .flatMap(s -> s);
    }

    private static List<String> lines(List<BaseCommand> commands) {
        return ManualPage.columns(
                commands.stream().map(c -> List.of(c.getName(), c.manual().purpose())).toList());
    }
}
