package counterbench.db;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * A few connections that read before and will again: opening one takes longer than most reading.
 */
final class IdleReaders {
    private static final int SECONDS_TO_ANSWER = 5;

    private final int most;
    private final Deque<Connection> idle = new ArrayDeque<>();
    private boolean closed;

    /** Keeps so many at most. */
    IdleReaders(int most) {
        this.most = most;
    }

    /** One that still works, or null. */
    @Nullable Connection take() {
        for (Connection next = poll(); next != null; next = poll()) {
            if (isAlive(next)) {
                return next;
            }
            Store.close(next);
        }
        return null;
    }

    private synchronized @Nullable Connection poll() {
        return idle.pollLast();
    }

    private static boolean isAlive(Connection connection) {
        try {
            return connection.isValid(SECONDS_TO_ANSWER);
        } catch (SQLException e) {
            return false;
        }
    }

    /** Keeps one whose transaction has ended; false if there are enough, or it is broken. */
    synchronized boolean keep(Connection connection) {
        if (closed || idle.size() == most || isClosed(connection)) {
            return false;
        }
        idle.addLast(connection);
        return true;
    }

    private static boolean isClosed(Connection connection) {
        try {
            return connection.isClosed();
        } catch (SQLException e) {
            return true;
        }
    }

    /** Closes all, and keeps none from now on. */
    synchronized void close() {
        closed = true;
        idle.forEach(Store::close);
        idle.clear();
    }
}
