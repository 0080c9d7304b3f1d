package counterbench.db;

import counterbench.shared.StoreUnusable;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationVersion;

/** Brings the store's tables to the version that this program was built with. */
public final class Migrations {
    /** The newest migration in {@code schema/}; a test holds it. */
    public static final String LATEST = "007";

    private final BeforeMigration before;

    /** What is done before tables that hold something are changed: a backup. */
    @FunctionalInterface
    public interface BeforeMigration {
        void prepare(Store store, String fromVersion);
    }

    public Migrations(BeforeMigration before) {
        this.before = before;
    }

    /**
     * Migrates if the store is older. Asks the history table itself first, since starting the
     * migration library costs a third of a second, which a person would feel at every command.
     *
     * @throws StoreUnusable if the store is newer than the program, or a migration fails
     */
    void bringUpToDate(Store store) {
        Optional<String> version = versionOf(store);
        if (version.filter(LATEST::equals).isPresent()) {
            return;
        }
        if (version.isPresent() && isNewer(version.get())) {
            throw new StoreUnusable(
                    "the store is of version "
                            + version.get()
                            + ", this program knows "
                            + LATEST
                            + "; use the newer program");
        }
        version.ifPresent(v -> before.prepare(store, v));
        migrate(store, LATEST);
    }

    private static boolean isNewer(String version) {
        return MigrationVersion.fromVersion(version).isNewerThan(LATEST);
    }

    /** Brings an empty store to a version, for restoring what was backed up at that version. */
    public static void migrate(Store store, String version) {
        StoreAddress at = store.address();
        try {
            Flyway.configure()
                    .dataSource(at.url(), at.user(), at.password())
                    .locations("classpath:counterbench/schema")
                    .target(version)
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new StoreUnusable(
                    "the store's tables could not be brought up to date: " + e.getMessage(), e);
        }
    }

    /** The version that a store is at; empty if it has no tables yet. */
    public static Optional<String> versionOf(Store store) {
        try (Connection connection = store.connect();
                Statement statement = connection.createStatement()) {
            if (!hasHistory(connection)) {
                return Optional.empty();
            }
            try (ResultSet rows =
                    statement.executeQuery(
                            "select \"version\" from \"flyway_schema_history\""
                                    + " where \"success\" = true order by \"installed_rank\" desc")) {
                return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
            }
        } catch (SQLException e) {
            throw new StoreUnusable("the store cannot be read: " + e.getMessage(), e);
        }
    }

    private static boolean hasHistory(Connection connection) throws SQLException {
        try (ResultSet tables =
                connection.getMetaData().getTables(null, null, "flyway_schema_history", null)) {
            return tables.next();
        }
    }
}
