package counterbench.shell.builtin;

import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Status;
import java.util.Optional;

/** Says which version this is. Does not open the store. */
public final class VersionCommand extends BaseCommand {
    public VersionCommand() {
        super(Manual.of("version", Group.EVERYBODY, "Say which version this is"));
    }

    @Override
    protected Status run(Invocation in) {
        in.print("counterbench " + version() + ", Java " + Runtime.version().feature());
        return Status.DONE;
    }

    private static String version() {
        return Optional.ofNullable(VersionCommand.class.getPackage().getImplementationVersion())
                .orElse("not packaged");
    }
}
