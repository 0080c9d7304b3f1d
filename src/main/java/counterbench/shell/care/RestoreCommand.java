package counterbench.shell.care;

import counterbench.care.store.RestoreBackup;
import counterbench.db.StoreAddress;
import counterbench.journal.store.Verification;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.function.Supplier;

/** Restores a backup into an empty store. */
public final class RestoreCommand extends BaseCommand {
    private static final Argument<Path> FILE =
            Argument.of("FILE", Readings.PATH, "the backup to restore");

    private final Supplier<StoreAddress> address;

    public RestoreCommand(Supplier<StoreAddress> address) {
        super(
                Manual.of("restore", Group.FILES_AND_CARE, "Restore a backup into an empty store")
                        .takes(FILE)
                        .example("restore backups/store-20260305-201500-000Z-v003.zip")
                        .note(
                                "The store must be empty: name a new folder in COUNTERBENCH_HOME,"
                                        + " or an empty database in COUNTERBENCH_STORE. A backup"
                                        + " of one kind of store can be restored into the other."));
        this.address = address;
    }

    @Override
    protected Status run(Invocation in) {
        RestoreBackup.Result result =
                new RestoreBackup(address.get(), in.progress()).run(in.get(FILE), in.now());
        in.print(
                "restored "
                        + result.manifest().rows()
                        + " rows as they were on "
                        + result.manifest().writtenAt().truncatedTo(ChronoUnit.SECONDS));
        boolean allHold = true;
        for (Map.Entry<String, Verification.Outcome> journal : result.journals().entrySet()) {
            Verification.Outcome outcome = journal.getValue();
            allHold &= outcome.broken().isEmpty();
            in.print("site " + journal.getKey() + ": " + words(outcome));
        }
        return allHold ? Status.DONE : Status.REFUSED;
    }

    private static String words(Verification.Outcome outcome) {
        return outcome.broken()
                .map(b -> "entry " + b.number() + " does not hold: " + b.why())
                .orElseGet(() -> outcome.holds() + ", the last with hash " + outcome.lastHash());
    }
}
