package counterbench.spool;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A row on its way to a sheet.
 *
 * @param key what it is sorted by
 * @param number how many came before it
 */
record SpooledRow(String key, long number, Map<String, ? extends @Nullable Object> values)
        implements Comparable<SpooledRow> {
    @Override
    public int compareTo(SpooledRow other) {
        int byKey = key.compareTo(other.key);
        return byKey != 0 ? byKey : Long.compare(number, other.number);
    }
}
