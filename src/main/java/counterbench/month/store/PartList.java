package counterbench.month.store;

import static counterbench.db.generated.Tables.PARTS_FACT;

import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.Map;
import java.util.TreeMap;
import org.jooq.DSLContext;

/** The names in a site's list of parts. */
final class PartList {
    private PartList() {}

    /**
     * Names by part.
     *
     * @param known the entry that counts as the newest
     */
    static Map<String, String> names(DSLContext sql, Site site, long known) {
        AllPosted posted = new AllPosted(sql, site.no(), known);
        Map<String, String> names = new TreeMap<>();
        sql.selectFrom(PARTS_FACT)
                .where(PARTS_FACT.SITE_NO.eq((short) site.no()))
                .orderBy(PARTS_FACT.BATCH, PARTS_FACT.LINE)
                .forEach(
                        r -> {
                            if (posted.counts(site.no(), r.getBatch(), r.getLine())) {
                                names.put(r.getPart(), r.getName());
                            }
                        });
        return names;
    }
}
