package counterbench.shell.care;

import counterbench.care.Check;
import counterbench.care.store.Backups;
import counterbench.care.store.CheckHome;
import counterbench.db.StoreAddress;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Looks at the home folder, the store and the backups. */
public final class CheckHomeCommand extends BaseCommand {
    private final Supplier<StoreAddress> address;
    private final Supplier<Backups> backups;

    public CheckHomeCommand(Supplier<StoreAddress> address, Supplier<Backups> backups) {
        super(
                Manual.of(
                                "check-home",
                                Group.FILES_AND_CARE,
                                "Check the home folder, the store and the backups")
                        .printsRows()
                        .example("check-home")
                        .note(
                                "Changes nothing. Ends with 1 if something is bad, with 4 if the"
                                        + " store cannot be used."));
        this.address = address;
        this.backups = backups;
    }

    @Override
    protected Status run(Invocation in) {
        List<Check> checks = new ArrayList<>();
        boolean usable =
                new CheckHome(in.home().location(), address, backups.get(), in.progress())
                        .run(in.now(), checks::add);
        try (Rows rows =
                in.rows(
                        Column.text("subject"),
                        Column.text("state"),
                        Column.text("found"),
                        Column.text("what_to_do"))) {
            checks.forEach(c -> rows.add(c.subject(), c.state().word(), c.found(), c.todo()));
        }
        boolean bad = checks.stream().anyMatch(c -> c.state() == Check.State.BAD);
        return usable ? bad ? Status.REFUSED : Status.DONE : Status.UNUSABLE;
    }
}
