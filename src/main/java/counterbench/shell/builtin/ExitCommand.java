package counterbench.shell.builtin;

import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Status;
import java.util.List;

/** Leaves the shell, or ends a script. */
public final class ExitCommand extends BaseCommand {
    public ExitCommand() {
        super(
                Manual.of("exit", Group.EVERYBODY, "Leave the shell; quit and Ctrl-D do the same")
                        .note("In a script, the lines after it are not run."));
        setAliases(List.of("quit"));
    }

    @Override
    protected Status run(Invocation in) {
        in.session().leave();
        return Status.DONE;
    }
}
