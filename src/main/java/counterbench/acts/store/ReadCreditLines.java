package counterbench.acts.store;

import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.claims.Credit;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** Looks up the lines of remittances by name, whether they wait to be matched or not. */
public final class ReadCreditLines {
    private final Store store;
    private final Site site;

    public ReadCreditLines(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The names of all lines that count. */
    public Set<String> names() {
        return store.read(
                sql -> {
                    AllPosted posted = new AllPosted(sql);
                    return sql
                            .select(
                                    CREDITS_FACT.BATCH,
                                    CREDITS_FACT.LINE,
                                    CREDITS_FACT.REMITTANCE,
                                    CREDITS_FACT.REMITTANCE_LINE)
                            .from(CREDITS_FACT)
                            .where(CREDITS_FACT.SITE_NO.eq((short) site.no()))
                            .fetch()
                            .stream()
                            .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                            .map(r -> Credit.nameOf(r.value3(), r.value4()))
                            .collect(Collectors.toSet());
                });
    }

    /** The claims that a line was matched to, by the entry that did so; none if it was not. */
    public SortedMap<Long, SortedSet<String>> matches(String line) {
        return store.read(sql -> matches(sql, line));
    }

    private SortedMap<Long, SortedSet<String>> matches(DSLContext sql, String line) {
        AllPosted posted = new AllPosted(sql);
        SortedMap<Long, SortedSet<String>> matches = new TreeMap<>();
        sql
                .select(
                        MATCHES_FACT.BATCH,
                        MATCHES_FACT.LINE,
                        MATCHES_FACT.REMITTANCE,
                        MATCHES_FACT.REMITTANCE_LINE,
                        MATCHES_FACT.CLAIM,
                        ENTRY.NUMBER)
                .from(MATCHES_FACT)
                .join(ENTRY)
                .on(ENTRY.SITE_NO.eq(MATCHES_FACT.SITE_NO), ENTRY.BATCH.eq(MATCHES_FACT.BATCH))
                .where(MATCHES_FACT.SITE_NO.eq((short) site.no()))
                .fetch()
                .stream()
                .filter(r -> Credit.nameOf(r.value3(), r.value4()).equals(line))
                .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                .forEach(
                        r ->
                                matches.computeIfAbsent(r.value6(), entry -> new TreeSet<>())
                                        .add(r.value5()));
        return matches;
    }
}
