package counterbench.review.store;

import counterbench.db.JobKey;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.ToIntFunction;
import org.jooq.Cursor;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jspecify.annotations.Nullable;

/** Rows that come in the order of job numbers, taken a job at a time. */
final class RowCursor implements AutoCloseable {
    private static final int FETCH = 1_000;

    private final Cursor<? extends Record> cursor;
    private final Iterator<? extends Record> rows;
    private final ToIntFunction<Record> jobNo;
    private @Nullable Record next;
    private int nextJobNo;

    private RowCursor(ResultQuery<? extends Record> query, ToIntFunction<Record> jobNo) {
        this.cursor = query.fetchSize(FETCH).fetchLazy();
        this.rows = cursor.iterator();
        this.jobNo = jobNo;
        advance();
    }

    /** Rows of a query that is ordered by a key in job order, its first field. */
    static RowCursor byKey(ResultQuery<? extends Record> query) {
        return new RowCursor(query, r -> JobKey.jobNo(r.get(0, Long.class)));
    }

    /** Rows of a query that is ordered by job number, its first field. */
    static RowCursor byJobNo(ResultQuery<? extends Record> query) {
        return new RowCursor(query, r -> r.get(0, Integer.class));
    }

    private void advance() {
        next = rows.hasNext() ? rows.next() : null;
        nextJobNo = next == null ? Integer.MAX_VALUE : jobNo.applyAsInt(next);
    }

    /** The job number of the next row; the greatest integer after the last. */
    int nextJobNo() {
        return nextJobNo;
    }

    /** The rows of a job; those of jobs before it are passed over. */
    List<Record> take(int wanted) {
        while (nextJobNo < wanted) {
            advance();
        }
        List<Record> taken = new ArrayList<>();
        while (next != null && nextJobNo == wanted) {
            taken.add(next);
            advance();
        }
        return taken;
    }

    @Override
    public void close() {
        cursor.close();
    }
}
