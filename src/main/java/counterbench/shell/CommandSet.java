package counterbench.shell;

import java.util.List;

/** The commands of one feature, as its wiring makes them. */
public record CommandSet(List<BaseCommand> commands) {
    public CommandSet {
        commands = List.copyOf(commands);
    }

    public CommandSet(BaseCommand... commands) {
        this(List.of(commands));
    }
}
