package counterbench.care.store;

import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.care.ReversalRequest;
import counterbench.claims.Credit;
import counterbench.claims.store.CreditLines;
import counterbench.db.Store;
import counterbench.shared.Site;
import java.util.HashSet;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;

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

    /** Three questions, however many lines there are: the remittances of one entry are few. */
    private SortedMap<Long, Set<String>> read(DSLContext sql, ReversalRequest request) {
        CreditLines lines = new CreditLines(sql, site);
        Set<String> gone = linesOf(sql, request);
        gone.removeAll(lines.names(CREDITS_FACT.REMITTANCE.in(remittances(request))));
        return gone.isEmpty() ? new TreeMap<>() : matching(lines, request, gone);
    }

    private Set<String> linesOf(DSLContext sql, ReversalRequest request) {
        return sql
                .select(CREDITS_FACT.LINE, CREDITS_FACT.REMITTANCE, CREDITS_FACT.REMITTANCE_LINE)
                .from(CREDITS_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(CREDITS_FACT.BATCH))
                .where(isOf(request))
                .fetch()
                .stream()
                .filter(r -> request.covers(r.value1()))
                .map(r -> Credit.nameOf(r.value2(), r.value3()))
                .collect(Collectors.toCollection(HashSet::new));
    }

    private Condition isOf(ReversalRequest request) {
        return ENTRY.SITE_NO
                .eq((short) site.no())
                .and(ENTRY.NUMBER.eq(request.entry()))
                .and(CREDITS_FACT.SITE_NO.eq((short) site.no()));
    }

    private Select<Record1<String>> remittances(ReversalRequest request) {
        return DSL.selectDistinct(CREDITS_FACT.REMITTANCE)
                .from(CREDITS_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(CREDITS_FACT.BATCH))
                .where(isOf(request));
    }

    private SortedMap<Long, Set<String>> matching(
            CreditLines lines, ReversalRequest request, Set<String> gone) {
        SortedMap<Long, Set<String>> lost = new TreeMap<>();
        lines.matches(MATCHES_FACT.REMITTANCE.in(remittances(request))).stream()
                .filter(match -> gone.contains(match.line()))
                .forEach(
                        match ->
                                lost.computeIfAbsent(match.entry(), entry -> new TreeSet<>())
                                        .add(match.line()));
        return lost;
    }
}
