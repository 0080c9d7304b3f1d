package counterbench.care.store;

import counterbench.care.Check;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.shared.Progress;
import counterbench.shared.StoreUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Looks at the home folder and everything in it, and changes nothing. */
public final class CheckHome {
    private final Path home;
    private final Supplier<StoreAddress> address;
    private final Backups backups;
    private final Progress progress;

    /**
     * @param home the home folder, whether it is there or not
     * @param address where the store lies; asked for only once the folder is known to be there
     */
    public CheckHome(
            Path home, Supplier<StoreAddress> address, Backups backups, Progress progress) {
        this.home = home;
        this.address = address;
        this.backups = backups;
        this.progress = progress;
    }

    /**
     * Gives the checks one after the other.
     *
     * @return whether the store could be used
     */
    public boolean run(Instant now, Consumer<Check> checks) {
        try {
            if (!Files.isDirectory(home)) {
                checks.accept(
                        Check.note(
                                "home folder",
                                "it is not there yet: " + home,
                                "type setup, which makes it; or name another in"
                                        + " COUNTERBENCH_HOME"));
            } else {
                new CheckFolder(home, checks).run();
            }
        } catch (IOException e) {
            checks.accept(
                    Check.bad("home folder", "it cannot be read: " + e, "see who may read it"));
        }
        boolean usable = checkStore(now, checks);
        new CheckBackups(backups, progress, checks).run(now);
        return usable;
    }

    private boolean checkStore(Instant now, Consumer<Check> checks) {
        try {
            if (!Files.isDirectory(home)) {
                return true;
            }
            StoreAddress at = address.get();
            if (at.file().filter(file -> !Files.exists(dataOf(file))).isPresent()) {
                checks.accept(CheckStore.empty());
                return true;
            }
            try (Store store = Store.asItIs(at)) {
                new CheckStore(store, checks).run(now);
            }
            return true;
        } catch (StoreUnusable e) {
            checks.accept(
                    Check.bad(
                            "store",
                            String.valueOf(e.getMessage()),
                            "see that its disk or server is there; if it is damaged, restore the"
                                    + " newest backup into another home folder"));
            return false;
        }
    }

    private static Path dataOf(Path file) {
        return file.resolveSibling(file.getFileName() + ".mv.db");
    }
}
