package counterbench.care.store;

import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.care.ReversalRequest;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jooq.DSLContext;

/** Which matches count no more since the lines of remittances were taken back that they match. */
public final class LostMatches {
    private final Store store;
    private final Site site;

    public LostMatches(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The credits that were taken back, by the entry that matched them. */
    public SortedMap<Long, Set<String>> of(ReversalRequest request) {
        return store.read(sql -> read(sql, request));
    }

    private SortedMap<Long, Set<String>> read(DSLContext sql, ReversalRequest request) {
        SortedMap<Long, Set<String>> lost = new TreeMap<>();
        AllPosted posted = new AllPosted(sql);
        sql
                .select(CREDITS_FACT.LINE, CREDITS_FACT.REMITTANCE, CREDITS_FACT.REMITTANCE_LINE)
                .from(CREDITS_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(CREDITS_FACT.BATCH))
                .where(
                        ENTRY.SITE_NO.eq((short) site.no()),
                        ENTRY.NUMBER.eq(request.entry()),
                        CREDITS_FACT.SITE_NO.eq((short) site.no()))
                .fetch()
                .stream()
                .filter(r -> request.covers(r.value1()))
                .filter(r -> !isThere(sql, posted, r.value2(), r.value3()))
                .forEach(r -> add(sql, posted, r.value2(), r.value3(), lost));
        return lost;
    }

    private boolean isThere(DSLContext sql, AllPosted posted, String remittance, String line) {
        return sql
                .select(CREDITS_FACT.BATCH, CREDITS_FACT.LINE)
                .from(CREDITS_FACT)
                .where(
                        CREDITS_FACT.SITE_NO.eq((short) site.no()),
                        CREDITS_FACT.REMITTANCE.eq(remittance),
                        CREDITS_FACT.REMITTANCE_LINE.eq(line))
                .fetch()
                .stream()
                .anyMatch(r -> posted.counts(site.no(), r.value1(), r.value2()));
    }

    private void add(
            DSLContext sql,
            AllPosted posted,
            String remittance,
            String line,
            SortedMap<Long, Set<String>> lost) {
        sql
                .select(ENTRY.NUMBER, MATCHES_FACT.BATCH, MATCHES_FACT.LINE)
                .from(MATCHES_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(MATCHES_FACT.BATCH))
                .where(
                        ENTRY.SITE_NO.eq((short) site.no()),
                        MATCHES_FACT.SITE_NO.eq((short) site.no()),
                        MATCHES_FACT.REMITTANCE.eq(remittance),
                        MATCHES_FACT.REMITTANCE_LINE.eq(line))
                .fetch()
                .stream()
                .filter(r -> posted.counts(site.no(), r.value2(), r.value3()))
                .forEach(
                        r ->
                                lost.computeIfAbsent(r.value1(), entry -> new TreeSet<>())
                                        .add(remittance + "/" + line));
    }
}
