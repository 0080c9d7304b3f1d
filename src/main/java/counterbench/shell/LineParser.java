package counterbench.shell;

import counterbench.shared.NearMatch;
import counterbench.shared.Visible;
import java.util.List;
import java.util.regex.Pattern;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.CommandParser;
import org.springframework.shell.core.command.ParsedInput;

/**
 * Takes a command line apart, knowing the options of the command that it names. Spring Shell's own
 * parser ignores unknown options, takes {@code -5} for an option, and cannot read quotes.
 */
public final class LineParser implements CommandParser {
    private static final Pattern NUMBER = Pattern.compile("-[0-9.].*");

    private final Commands commands;

    public LineParser(Commands commands) {
        this.commands = commands;
    }

    @Override
    public ParsedInput parse(String line) {
        return parse(Tokenizer.split(line));
    }

    /**
     * The command that the words name, its options and its arguments; of a line with {@code --help}
     * only the command and that option.
     *
     * @throws UsageError if there is no such command or an option is none of its
     */
    public ParsedInput parse(List<String> words) {
        Commands.Match match =
                commands.at(words).orElseThrow(() -> new UsageError(notFound(words)));
        return new Line(match.command(), words.subList(match.words(), words.size())).parse();
    }

    private String notFound(List<String> words) {
        String first = words.get(0);
        String two = String.join(" ", words.subList(0, Math.min(2, words.size())));
        List<String> under = commands.under(first).stream().map(BaseCommand::getName).toList();
        boolean near = commands.near(two).isPresent();
        if (under.isEmpty()) {
            return commands.unknown(near ? two : first);
        }
        String thereAre = "; there are " + String.join(", ", under);
        return two.equals(first)
                ? "\"" + first + "\" alone is not a command" + thereAre
                : commands.unknown(two) + (near ? "" : thereAre);
    }

    /** One line being taken apart. */
    private static final class Line {
        private final BaseCommand command;
        private final List<String> words;
        private final ParsedInput.Builder input = ParsedInput.builder();
        private int at;
        private int arguments;
        private boolean onlyArguments;
        private boolean help;

        Line(BaseCommand command, List<String> words) {
            this.command = command;
            this.words = words;
        }

        ParsedInput parse() {
            while (at < words.size() && !help) {
                take(words.get(at++));
            }
            return help ? onlyHelp() : named(input).build();
        }

        private ParsedInput onlyHelp() {
            CommandOption option = CommandOption.with().longName("help").value("true").build();
            return named(ParsedInput.builder()).addOption(option).build();
        }

        private ParsedInput.Builder named(ParsedInput.Builder builder) {
            List<String> name = command.words();
            builder.commandName(name.get(0));
            name.subList(1, name.size()).forEach(builder::addSubCommand);
            return builder;
        }

        private void take(String word) {
            if (onlyArguments || !word.startsWith("-") || isPlain(word)) {
                input.addArgument(new CommandArgument(arguments++, word));
            } else if (word.equals("--")) {
                onlyArguments = true;
            } else if (word.equals("--help") || word.equals("-h")) {
                help = true;
            } else {
                option(word);
            }
        }

        private static boolean isPlain(String word) {
            return word.equals("-") || NUMBER.matcher(word).matches();
        }

        private void option(String word) {
            int equals = word.indexOf('=');
            String label = equals < 0 ? word : word.substring(0, equals);
            Option<?> option = command.option(label).orElseThrow(() -> unknownOption(label));
            String value = equals < 0 ? valueOf(option) : word.substring(equals + 1);
            if (option.isFlag() && equals >= 0) {
                throw new UsageError("option " + label + " takes no value; leave out =" + value);
            }
            input.addOption(
                    CommandOption.with()
                            .longName(option.name())
                            .type(String.class)
                            .value(value)
                            .build());
        }

        private String valueOf(Option<?> option) {
            if (option.isFlag()) {
                return "true";
            }
            if (at == words.size() || words.get(at).startsWith("--")) {
                throw new UsageError(
                        "option "
                                + option.label()
                                + " needs a value; write "
                                + option.form()
                                + " (or "
                                + option.label()
                                + "="
                                + option.valueName()
                                + " where it begins with hyphens)");
            }
            return words.get(at++);
        }

        private UsageError unknownOption(String label) {
            List<String> known = command.manual().options().stream().map(Option::label).toList();
            String near =
                    NearMatch.of(label, known).map(n -> "; did you mean " + n + "?").orElse("");
            return new UsageError(
                    command.getName() + " has no option " + Visible.text(label) + near);
        }
    }
}
