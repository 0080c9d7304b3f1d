package counterbench.claims.store;

import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.claims.Credit;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** The lines of a site's remittances, and their matches, as far as they count. */
public final class CreditLines {
    private final DSLContext sql;
    private final Site site;
    private final AllPosted posted;

    public CreditLines(DSLContext sql, Site site) {
        this.sql = sql;
        this.site = site;
        this.posted = new AllPosted(sql);
    }

    /**
     * That a line was matched to a claim.
     *
     * @param entry the number of the entry that did so
     * @param line the name of the line
     */
    public record Match(long entry, String line, String claim) {}

    /** The names of the lines for which a condition on credits holds. */
    public Set<String> names(Condition which) {
        return sql
                .select(
                        CREDITS_FACT.BATCH,
                        CREDITS_FACT.LINE,
                        CREDITS_FACT.REMITTANCE,
                        CREDITS_FACT.REMITTANCE_LINE)
                .from(CREDITS_FACT)
                .where(CREDITS_FACT.SITE_NO.eq((short) site.no()), which)
                .fetch()
                .stream()
                .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                .map(r -> Credit.nameOf(r.value3(), r.value4()))
                .collect(Collectors.toSet());
    }

    /** The matches of lines for which a condition on matches holds. */
    public List<Match> matches(Condition which) {
        return sql
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
                .where(MATCHES_FACT.SITE_NO.eq((short) site.no()), which)
                .fetch()
                .stream()
                .filter(r -> posted.counts(site.no(), r.value1(), r.value2()))
                .map(r -> new Match(r.value6(), Credit.nameOf(r.value3(), r.value4()), r.value5()))
                .toList();
    }
}
