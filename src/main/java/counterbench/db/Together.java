package counterbench.db;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Select;

/**
 * Looks many names up in few statements. Each is a union of questions about one name, so that H2
 * goes straight to every name as {@link OneByOne} does, and a server far away is not asked for each
 * of them.
 */
public final class Together {
    /** The most names that one statement asks about. */
    static final int MOST = 100;

    private Together() {}

    /**
     * All that is found for the names, in any order.
     *
     * @param question what is asked about one name; the same columns for each
     */
    public static <T, R extends Record> List<R> fetch(
            DSLContext sql, List<T> names, Function<T, Select<R>> question) {
        List<R> found = new ArrayList<>();
        for (int from = 0; from < names.size(); from += MOST) {
            names.subList(from, Math.min(from + MOST, names.size())).stream()
                    .map(question)
                    .reduce(Select::unionAll)
                    .ifPresent(all -> found.addAll(sql.fetch(all)));
        }
        return found;
    }
}
