package counterbench.db;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jooq.SQLDialect;
import org.jspecify.annotations.Nullable;

/**
 * Fresh real stores for tests: the embedded one in a new folder, and a new database on a real
 * PostgreSQL that the tests start themselves.
 */
public enum TestStores {
    H2,
    POSTGRES;

    /** The name of a database at the end of its address. */
    private static final Pattern DATABASE = Pattern.compile("^.*/(test[0-9]+)(?:\\?.*)?$");

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static @Nullable EmbeddedPostgres server;

    /** Both kinds, for parameterised tests. */
    public static Stream<TestStores> both() {
        return Stream.of(values());
    }

    /** The address of a new, empty store. */
    public StoreAddress address() {
        try {
            return this == H2
                    ? StoreAddress.of(Files.createTempDirectory("counterbench-test"), null)
                    : newDatabase("template0 encoding 'UTF8' lc_collate 'C' lc_ctype 'C'");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A new store with tables in it. */
    public Store open() {
        return open(address());
    }

    /** Opens a store that a test has closed or given to another process. */
    public static Store open(StoreAddress address) {
        return Store.open(address, new Migrations((store, from) -> {}));
    }

    /** The address of a store that holds what another holds, which is closed. */
    public StoreAddress copyOf(StoreAddress closed) {
        try {
            if (this == H2) {
                Path folder = Files.createTempDirectory("counterbench-test");
                try (Stream<Path> files = Files.list(folder(closed))) {
                    for (Path file : files.toList()) {
                        Files.copy(file, folder.resolve(file.getFileName()));
                    }
                }
                return StoreAddress.of(folder, null);
            }
            return newDatabase(DATABASE.matcher(closed.url()).replaceFirst("$1"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static synchronized StoreAddress newDatabase(String template) throws IOException {
        EmbeddedPostgres running = server;
        if (running == null) {
            running = EmbeddedPostgres.builder().start();
            server = running;
        }
        String name = "test" + COUNT.incrementAndGet();
        try (Connection connection = running.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name + " template " + template);
        } catch (SQLException e) {
            throw new IOException(e);
        }
        String url = running.getJdbcUrl("postgres", name);
        return new StoreAddress(url, "", "", SQLDialect.POSTGRES, Optional.empty());
    }

    /** Where the embedded store of an address lies. */
    public static Path folder(StoreAddress address) {
        return Objects.requireNonNull(address.file().orElseThrow().getParent());
    }
}
