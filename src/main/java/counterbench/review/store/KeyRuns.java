package counterbench.review.store;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jooq.Cursor;
import org.jooq.Record;
import org.jooq.ResultQuery;

/** Rows in the order of a key, given a key at a time. */
final class KeyRuns {
    private static final int FETCH = 1_000;

    private KeyRuns() {}

    /** Runs a query that is ordered by the key and gives the rows of each key together. */
    static <R extends Record> void each(
            ResultQuery<R> query, Function<R, String> key, Consumer<List<R>> rows) {
        List<R> run = new ArrayList<>();
        try (Cursor<R> cursor = query.fetchSize(FETCH).fetchLazy()) {
            for (R row : cursor) {
                if (!run.isEmpty() && !key.apply(row).equals(key.apply(run.get(0)))) {
                    rows.accept(List.copyOf(run));
                    run.clear();
                }
                run.add(row);
            }
        }
        if (!run.isEmpty()) {
            rows.accept(run);
        }
    }
}
