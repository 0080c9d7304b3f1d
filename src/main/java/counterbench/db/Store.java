package counterbench.db;

import counterbench.shared.Interrupted;
import counterbench.shared.StoreUnusable;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.ExecuteWithoutWhere;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jooq.impl.DefaultConfiguration;
import org.jooq.impl.DefaultExecuteListenerProvider;
import org.jspecify.annotations.Nullable;

/**
 * The open store. One connection writes, one transaction at a time, and is durable before it
 * returns; readers get connections of their own.
 */
public final class Store implements AutoCloseable {
    private static final int TRIES_TO_OPEN = 50;
    private static final int BETWEEN_TRIES_MILLIS = 200;

    /** One for each cursor of a component's rows, and one to look things up with. */
    private static final int IDLE_READERS = 12;

    /** A server has seats for so many only, and one connection there holds several cursors. */
    private static final int IDLE_SERVED_READERS = 3;

    private final StoreAddress address;
    private final Settings settings =
            new Settings()
                    .withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED)
                    .withRenderSchema(false)
                    .withExecuteUpdateWithoutWhere(ExecuteWithoutWhere.THROW)
                    .withExecuteDeleteWithoutWhere(ExecuteWithoutWhere.THROW)
                    .withAttachRecords(false)
                    .withExecuteLogging(false);
    private @Nullable Connection writer;
    private @Nullable Connection keeper;
    private final IdleReaders readers;
    private boolean closed;

    static {
        // jOOQ writes its name and a tip of the day to the log unless it is told not to.
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
        SteadyFiles.register();
    }

    private Store(StoreAddress address) {
        this.address = address;
        this.readers = new IdleReaders(isEmbedded() ? IDLE_READERS : IDLE_SERVED_READERS);
    }

    /**
     * Opens the store and brings its tables up to date.
     *
     * @throws StoreUnusable if it cannot be opened
     */
    public static Store open(StoreAddress address, Migrations migrations) {
        Store store = asItIs(address);
        migrations.bringUpToDate(store);
        return store;
    }

    /** The store with whatever tables it has, for those who make or look after them. */
    public static Store asItIs(StoreAddress address) {
        // Read by H2 when its server starts: other machines must not reach the embedded store.
        System.setProperty("h2.bindAddress", "127.0.0.1");
        return new Store(address);
    }

    /** Where it lies. */
    public StoreAddress address() {
        return address;
    }

    /** Whether it is the embedded store. */
    public boolean isEmbedded() {
        return address.dialect() == SQLDialect.H2;
    }

    /** A connection of its own, in auto-commit mode. The caller closes it. */
    public Connection connect() {
        keepOpen();
        return newConnection();
    }

    /**
     * Holds the embedded store open until this is closed: it would otherwise be closed and opened
     * anew, which takes a fifth of a second, whenever its last connection goes.
     */
    private synchronized void keepOpen() {
        if (isEmbedded() && keeper == null && !closed) {
            keeper = newConnection();
        }
    }

    /** Makes a connection ready for use. */
    @FunctionalInterface
    private interface Preparing {
        void prepare(Connection connection) throws SQLException;
    }

    private Connection newConnection() {
        return newConnection(connection -> {});
    }

    /**
     * Shells that open the embedded store at the same moment find each other's lock file half
     * written, or still that of a shell that has just ended, and try again.
     */
    private Connection newConnection(Preparing preparing) {
        for (int tries = 1; ; tries++) {
            try {
                return openConnection(preparing);
            } catch (SQLException e) {
                if (!isChangingHands(e) || tries == TRIES_TO_OPEN) {
                    throw unusable(e);
                }
                pause();
            }
        }
    }

    private boolean isChangingHands(SQLException e) {
        String message = String.valueOf(e.getMessage());
        return isEmbedded()
                && (ConnectionBroken.of(e) != null
                        || message.contains("Lock file recently modified")
                        || message.contains("Locked by another process"));
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(BETWEEN_TRIES_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Interrupted();
        }
    }

    private Connection openConnection(Preparing preparing) throws SQLException {
        Connection connection =
                address.user().isEmpty()
                        ? DriverManager.getConnection(address.url())
                        : DriverManager.getConnection(
                                address.url(), address.user(), address.password());
        try {
            preparing.prepare(connection);
            return connection;
        } catch (SQLException e) {
            close(connection);
            throw e;
        }
    }

    /** jOOQ on a connection. */
    public DSLContext on(Connection connection) {
        return DSL.using(
                new DefaultConfiguration()
                        .set(connection)
                        .set(address.dialect())
                        .set(settings)
                        .set(new DefaultExecuteListenerProvider(ConnectionBroken.told())));
    }

    /**
     * A connection for reading, in a transaction that only reads. The caller gives it back to
     * {@link #closeReader}.
     */
    public Connection connectToRead() {
        Connection idle = readers.take();
        return idle == null ? newReader() : idle;
    }

    private Connection newReader() {
        keepOpen();
        return newConnection(this::forReading);
    }

    private void forReading(Connection connection) throws SQLException {
        if (isEmbedded()) {
            // Rows come as they are asked for; H2 would otherwise build whole results first.
            try (Statement statement = connection.createStatement()) {
                statement.execute("set lazy_query_execution true");
            }
        }
        connection.setAutoCommit(false);
        connection.setTransactionIsolation(
                isEmbedded()
                        ? Connection.TRANSACTION_READ_COMMITTED
                        : Connection.TRANSACTION_REPEATABLE_READ);
    }

    /**
     * Reads the whole store as it is at one moment, whatever is written meanwhile. The embedded
     * store keeps what others overwrite until this is done, so it is for care, not for every act.
     */
    public <T> T readSnapshot(Function<DSLContext, T> work) {
        Connection connection = newReader();
        try {
            if (isEmbedded()) {
                connection.rollback();
                on(connection)
                        .execute(
                                "set session characteristics as transaction isolation level"
                                        + " snapshot");
            }
            return work.apply(on(connection));
        } catch (SQLException e) {
            throw unusable(e);
        } finally {
            rollback(connection);
            close(connection);
        }
    }

    /** Ends a reading. */
    public void closeReader(Connection connection) {
        rollback(connection);
        if (!readers.keep(connection)) {
            close(connection);
        }
    }

    /** Reads on a connection of its own. */
    public <T> T read(Function<DSLContext, T> work) {
        Connection connection = connectToRead();
        try {
            return work.apply(on(connection));
        } finally {
            closeReader(connection);
        }
    }

    /** Reads anew if the connection breaks meanwhile, where a failure would hide what was done. */
    public <T> T again(Supplier<T> reading) {
        return ConnectionBroken.triedAgain(reading);
    }

    /** Runs one transaction. It is on the disk when this returns, and undone if the work throws. */
    public <T> T write(Function<DSLContext, T> work) {
        T result = writeUnsynced(work);
        if (isEmbedded()) {
            writer().execute("checkpoint sync");
        }
        return result;
    }

    /** As {@link #write} without a value. */
    public void run(Consumer<DSLContext> work) {
        write(
                sql -> {
                    work.accept(sql);
                    return true;
                });
    }

    /**
     * As {@link #write}, but safe only against a killed process, not yet against a power cut: for
     * staged rows.
     */
    public synchronized <T> T writeUnsynced(Function<DSLContext, T> work) {
        Connection connection = writerConnection();
        try {
            T result = work.apply(on(connection));
            connection.commit();
            return result;
        } catch (SQLException e) {
            throw unusable(e);
        } finally {
            rollback(connection);
        }
    }

    private static void rollback(Connection connection) {
        try {
            connection.rollback();
        } catch (SQLException e) {
            // The connection is gone, and with it whatever was not committed.
        }
    }

    private DSLContext writer() {
        return on(writerConnection());
    }

    private synchronized Connection writerConnection() {
        try {
            Connection open = writer;
            if (open == null || !open.isValid(5)) {
                keepOpen();
                open = newConnection(connection -> connection.setAutoCommit(false));
                writer = open;
            }
            return open;
        } catch (SQLException e) {
            throw unusable(e);
        }
    }

    private StoreUnusable unusable(SQLException e) {
        ConnectionBroken broken = ConnectionBroken.of(e);
        return broken != null
                ? broken
                : new StoreUnusable("the store cannot be used: " + firstLine(e), e);
    }

    private static String firstLine(SQLException e) {
        String message = String.valueOf(e.getMessage());
        return message.lines().findFirst().orElse(message);
    }

    @Override
    public synchronized void close() {
        closed = true;
        readers.close();
        close(writer);
        close(keeper);
        writer = null;
        keeper = null;
    }

    static void close(@Nullable Connection connection) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            // Closing a broken connection changes nothing.
        }
    }
}
