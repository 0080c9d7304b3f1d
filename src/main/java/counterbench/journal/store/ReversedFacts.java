package counterbench.journal.store;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.journal.Entry;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jooq.DSLContext;

/**
 * Which facts a reversal took back; what others had taken back before is not among them.
 *
 * @param kinds how many of each kind
 * @param range the lines of the reversed entry between which they stand
 */
public record ReversedFacts(SortedMap<FactKind, Integer> kinds, JournalBook.Range range) {
    /** Those of a reversal. */
    public static ReversedFacts by(Entry reversal, Store store) {
        long number = Objects.requireNonNull(reversal.reverses(), "no reversal");
        return store.read(sql -> read(sql, reversal, number));
    }

    private static ReversedFacts read(DSLContext sql, Entry reversal, long number) {
        short siteNo = (short) reversal.siteNo();
        long batch = JournalBook.batchOf(sql, siteNo, number);
        Reversals reversals = Reversals.of(sql, siteNo);
        SortedMap<FactKind, Integer> kinds = new TreeMap<>();
        int first = Integer.MAX_VALUE;
        int last = 0;
        for (FactTable table : FactTable.values()) {
            try (var lines =
                    sql.select(table.line())
                            .from(table.table())
                            .where(table.siteNo().eq(siteNo), table.batch().eq(batch))
                            .fetchSize(1_000)
                            .fetchLazy()) {
                for (var row : lines) {
                    int line = row.value1();
                    if (reversals.ofLine(number, line).orElse(0L) == reversal.number()) {
                        kinds.merge(table.kind(), 1, Integer::sum);
                        first = Math.min(first, line);
                        last = Math.max(last, line);
                    }
                }
            }
        }
        return new ReversedFacts(kinds, new JournalBook.Range(first, last));
    }

    /** How many there are. */
    public int count() {
        return kinds.values().stream().mapToInt(Integer::intValue).sum();
    }
}
