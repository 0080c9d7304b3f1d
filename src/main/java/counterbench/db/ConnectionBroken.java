package counterbench.db;

import counterbench.shared.StoreUnusable;
import java.io.EOFException;
import java.net.SocketException;
import java.sql.SQLException;
import java.util.Set;
import java.util.function.Supplier;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jspecify.annotations.Nullable;

/**
 * The way to the store was cut, for nothing that was asked: the server is gone, or the shell that
 * served the embedded store to the others has ended. What was not committed is undone, and the same
 * may be tried again.
 */
public final class ConnectionBroken extends StoreUnusable {
    private static final long serialVersionUID = 1L;
    private static final int TRIES = 5;

    /** SQL's class of states for connections. */
    private static final String CONNECTION_EXCEPTION = "08";

    /** PostgreSQL's class "operator intervention": the server shuts down, or is not up yet. */
    private static final String SERVER_STOPS = "57P0";

    /** H2: connection is broken, database is closed, database is closing. */
    private static final Set<String> EMBEDDED = Set.of("90067", "90098", "90121");

    /**
     * H2: could not read or write, which is said of files and of what comes from a server alike.
     */
    private static final String EMBEDDED_IO = "90028";

    private ConnectionBroken(SQLException cause) {
        super(
                "the connection to the store broke; what was not recorded yet is undone: enter the"
                        + " command again",
                cause);
    }

    /** What a failure is if the connection broke; null if it is about what was asked. */
    static @Nullable ConnectionBroken of(@Nullable SQLException e) {
        String state = e == null ? null : e.getSQLState();
        if (e == null || state == null) {
            return null;
        }
        boolean broken =
                state.startsWith(CONNECTION_EXCEPTION)
                        || state.startsWith(SERVER_STOPS)
                        || EMBEDDED.contains(state)
                        || (EMBEDDED_IO.equals(state) && isOfTransport(e.getCause()));
        return broken ? new ConnectionBroken(e) : null;
    }

    /** Whether it was the other end that fell silent while rows were coming, and no file. */
    private static boolean isOfTransport(@Nullable Throwable cause) {
        return cause instanceof EOFException || cause instanceof SocketException;
    }

    /** Reads until the connection holds; shells that serve the store may end one after another. */
    static <T> T triedAgain(Supplier<T> reading) {
        for (int tries = 1; ; tries++) {
            try {
                return reading.get();
            } catch (ConnectionBroken e) {
                if (tries == TRIES) {
                    throw e;
                }
            }
        }
    }

    /** Has every statement say so itself. */
    static ExecuteListener told() {
        return ExecuteListener.onException(ConnectionBroken::tell);
    }

    private static void tell(ExecuteContext statement) {
        ConnectionBroken broken = of(statement.sqlException());
        if (broken != null) {
            statement.exception(broken);
        }
    }
}
