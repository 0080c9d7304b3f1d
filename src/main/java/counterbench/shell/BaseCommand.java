package counterbench.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.AbstractCommand;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.ParsedInput;

/** A command: says what it takes, and does its work in {@link #run}. */
public abstract class BaseCommand extends AbstractCommand {
    private final Manual manual;

    protected BaseCommand(Manual manual) {
        super(manual.name(), manual.purpose(), manual.group().title());
        this.manual = manual;
        setOptions(manual.options().stream().map(BaseCommand::described).toList());
    }

    private static CommandOption described(Option<?> option) {
        return CommandOption.with()
                .longName(option.name())
                .description(option.purpose())
                .required(option.required())
                .type(String.class)
                .build();
    }

    /**
     * Does the work. What cannot be done is thrown as {@link counterbench.shared.Refused}, never
     * printed.
     */
    protected abstract Status run(Invocation in) throws Exception;

    /**
     * Looks at a line without running it.
     *
     * @throws UsageError if the command cannot take it
     */
    public final void check(ParsedInput input) {
        Values.of(manual, input);
    }

    /** What it says of itself. */
    public final Manual manual() {
        return manual;
    }

    /** The words of its name. */
    public final List<String> words() {
        return Tokenizer.split(getName());
    }

    final Optional<Option<?>> option(String label) {
        List<Option<?>> options = manual.options();
        return options.stream().filter(option -> option.label().equals(label)).findFirst();
    }

    @Override
    public final String getHelp() {
        return ManualPage.of(manual);
    }

    @Override
    public final ExitStatus doExecute(CommandContext context) throws Exception {
        Values values = Values.of(manual, context.parsedInput());
        String line = WrittenLine.of(manual, context.parsedInput());
        Desk desk = (Desk) context.inputReader();
        try (Invocation invocation = new Invocation(manual.name(), line, values, desk)) {
            return run(invocation).toExitStatus();
        }
    }
}
