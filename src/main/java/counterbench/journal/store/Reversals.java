package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.REVERSALS_FACT;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** What of a site's journal has been taken back, and by which entry. */
public final class Reversals {
    private final Map<Long, Long> whole = new HashMap<>();
    private final Map<Long, Map<Long, Long>> lines = new HashMap<>();

    private Reversals() {}

    /** All that are posted. */
    public static Reversals of(DSLContext sql, int siteNo) {
        Reversals reversals = new Reversals();
        sql.select(ENTRY.NUMBER, REVERSALS_FACT.ENTRY, REVERSALS_FACT.ENTRY_LINE)
                .from(REVERSALS_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(REVERSALS_FACT.BATCH))
                .where(REVERSALS_FACT.SITE_NO.eq((short) siteNo))
                .orderBy(ENTRY.NUMBER, REVERSALS_FACT.LINE)
                .forEach(r -> reversals.add(r.value1(), r.value2(), r.value3()));
        return reversals;
    }

    private void add(long by, long entry, @Nullable Long line) {
        if (line == null) {
            whole.putIfAbsent(entry, by);
        } else {
            lines.computeIfAbsent(entry, e -> new HashMap<>()).putIfAbsent(line, by);
        }
    }

    /** The entry that took back all of an entry, or all that was left of it. */
    public Optional<Long> ofEntry(long entry) {
        return Optional.ofNullable(whole.get(entry));
    }

    /** The entry that took back a line. */
    public Optional<Long> ofLine(long entry, int line) {
        Long by = lines.getOrDefault(entry, Map.of()).get((long) line);
        return Optional.ofNullable(by).or(() -> ofEntry(entry));
    }

    /** How many lines of an entry were taken back one by one. */
    public int countOfLines(long entry) {
        return lines.getOrDefault(entry, Map.of()).size();
    }
}
