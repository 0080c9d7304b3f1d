package counterbench.shell.care;

import counterbench.care.store.Backups;
import counterbench.db.Store;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Writes a backup of the whole store. */
public final class BackupCommand extends BaseCommand {
    private static final Argument<Path> FILE =
            Argument.of("FILE", Readings.PATH, "where to; unless said, in the home folder")
                    .asOptional();

    private final Supplier<Store> store;
    private final Supplier<Backups> backups;

    public BackupCommand(Supplier<Store> store, Supplier<Backups> backups) {
        super(
                Manual.of("backup", Group.FILES_AND_CARE, "Write a backup of the whole store")
                        .takes(FILE)
                        .example("backup")
                        .example("backup /mnt/stick/counterbench.zip")
                        .note(
                                "Others may go on working meanwhile. Keep backups on another disk,"
                                        + " too, where only you can read them."));
        this.store = store;
        this.backups = backups;
    }

    @Override
    protected Status run(Invocation in) {
        Backups to = backups.get();
        Backups.Written written =
                in.has(FILE)
                        ? to.write(store.get(), in.get(FILE), in.now(), in.progress())
                        : to.write(store.get(), in.now(), in.progress());
        in.print(
                "backup \""
                        + written.file()
                        + "\" is written: "
                        + written.rows()
                        + " rows, version "
                        + written.version());
        return Status.DONE;
    }
}
