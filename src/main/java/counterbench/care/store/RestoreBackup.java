package counterbench.care.store;

import counterbench.care.Manifest;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.journal.store.Verification;
import counterbench.people.store.StaffBook;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.StoreUnusable;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.flywaydb.core.api.MigrationVersion;

/**
 * Restores a backup into an empty store of either kind: makes the tables of the backup's version,
 * fills them, brings them up to date, and verifies the journals.
 */
public final class RestoreBackup {
    private final StoreAddress address;
    private final Progress progress;

    /**
     * @param address where the empty store lies
     */
    public RestoreBackup(StoreAddress address, Progress progress) {
        this.address = address;
        this.progress = progress;
    }

    /**
     * What was restored.
     *
     * @param journals what the verification of each site's journal saw, by site
     */
    public record Result(Manifest manifest, Map<String, Verification.Outcome> journals) {}

    /**
     * Restores it.
     *
     * @throws Refused if the backup is not as it was written, or the store is not empty
     */
    public Result run(Path file, Instant now) {
        try (BackupFile backup = BackupFile.open(file);
                Store store = Store.asItIs(address)) {
            refuseNewer(file, backup.manifest());
            refuseUnlessEmpty(file, store);
            backup.verify(progress);
            clear(store);
            Migrations.migrate(store, backup.manifest().version());
            new LoadTables(store, backup, progress).run();
            Migrations.migrate(store, Migrations.LATEST);
            return new Result(backup.manifest(), verified(store, now));
        }
    }

    private static void refuseNewer(Path file, Manifest manifest) {
        MigrationVersion version = MigrationVersion.fromVersion(manifest.version());
        if (version.isNewerThan(Migrations.LATEST)) {
            throw new Refused(
                    "backup \"" + file + "\"",
                    "it is of version "
                            + manifest.version()
                            + ", this program knows "
                            + Migrations.LATEST,
                    "restore it with the newer program");
        }
    }

    private static void refuseUnlessEmpty(Path file, Store store) {
        if (Migrations.versionOf(store).isPresent() && hasSite(store)) {
            throw new Refused(
                    "restore of \"" + file + "\"",
                    "the store is not empty, and restoring would mix two journals",
                    "name another home folder in COUNTERBENCH_HOME, or an empty database in"
                            + " COUNTERBENCH_STORE");
        }
    }

    private static boolean hasSite(Store store) {
        try (Connection connection = store.connect();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select count(*) from site")) {
            return rows.next() && rows.getLong(1) > 0;
        } catch (SQLException e) {
            throw new StoreUnusable("the store cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Takes away the empty tables of another version, or what a restoring that was cut off left.
     * Only tables that the migrations have made: a store without their history is not touched.
     */
    private static void clear(Store store) {
        Optional<String> version = Migrations.versionOf(store);
        if (version.isEmpty()) {
            return;
        }
        try (Connection connection = store.connect();
                Statement statement = connection.createStatement()) {
            Catalogue catalogue = Catalogue.of(connection);
            for (String table : catalogue.tables().keySet()) {
                statement.execute("drop table " + table + " cascade");
            }
            for (String sequence : catalogue.sequences()) {
                statement.execute("drop sequence " + sequence);
            }
            statement.execute("drop table \"" + Catalogue.HISTORY + "\"");
        } catch (SQLException e) {
            throw new StoreUnusable("the store cannot be cleared: " + e.getMessage(), e);
        }
    }

    private static Map<String, Verification.Outcome> verified(Store store, Instant now) {
        Map<String, Verification.Outcome> journals = new TreeMap<>();
        for (Site site : new StaffBook(store).sites()) {
            journals.put(site.site(), new VerifyJournal(store).run(site, now));
        }
        return journals;
    }
}
