package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.REVERSALS_FACT;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jooq.DSLContext;

/**
 * Which facts of a site count: those of posted batches, up to a known entry, that are not reversed
 * by then. Scans ask it for every row; it holds a few bytes an entry.
 */
public final class Posted {
    private static final long NOT_POSTED = 0;

    private final Map<Long, Long> numberOfBatch = new HashMap<>();
    private final Set<Long> reversedEntries = new HashSet<>();
    private final Set<String> reversedLines = new HashSet<>();
    private long head;

    private Posted() {}

    /** All that is posted. */
    public static Posted of(DSLContext sql, int siteNo) {
        return upTo(sql, siteNo, Long.MAX_VALUE);
    }

    /** What was posted when the entry of that number was the newest. */
    public static Posted upTo(DSLContext sql, int siteNo, long known) {
        Posted posted = new Posted();
        sql.select(ENTRY.BATCH, ENTRY.NUMBER)
                .from(ENTRY)
                .where(ENTRY.SITE_NO.eq((short) siteNo), ENTRY.NUMBER.le(known))
                .forEach(r -> posted.add(r.value1(), r.value2()));
        sql.select(REVERSALS_FACT.BATCH, REVERSALS_FACT.ENTRY, REVERSALS_FACT.ENTRY_LINE)
                .from(REVERSALS_FACT)
                .where(REVERSALS_FACT.SITE_NO.eq((short) siteNo))
                .forEach(r -> posted.reverse(r.value1(), r.value2(), r.value3()));
        return posted;
    }

    private void add(long batch, long number) {
        numberOfBatch.put(batch, number);
        head = Math.max(head, number);
    }

    private void reverse(long batch, long entry, @org.jspecify.annotations.Nullable Long line) {
        if (!numberOfBatch.containsKey(batch)) {
            return;
        }
        if (line == null) {
            reversedEntries.add(entry);
        } else {
            reversedLines.add(entry + "." + line);
        }
    }

    /** The number of the newest entry that counts; 0 where there is none. */
    public long head() {
        return head;
    }

    /** The number of the entry of a batch; 0 if it is not posted. */
    public long numberOf(long batch) {
        return numberOfBatch.getOrDefault(batch, NOT_POSTED);
    }

    /** Whether the fact on a line of a batch counts. */
    public boolean counts(long batch, int line) {
        long number = numberOf(batch);
        return number != NOT_POSTED && !isReversed(number, line);
    }

    /** Whether a fact has been taken back. */
    public boolean isReversed(long number, int line) {
        return reversedEntries.contains(number)
                || (!reversedLines.isEmpty() && reversedLines.contains(number + "." + line));
    }
}
