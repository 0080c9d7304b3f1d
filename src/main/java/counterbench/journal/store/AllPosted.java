package counterbench.journal.store;

import java.util.HashMap;
import java.util.Map;
import org.jooq.DSLContext;

/** Which facts count, at every site; for what belongs to the whole store. */
public final class AllPosted {
    private final DSLContext sql;
    private final Map<Integer, Posted> bySite = new HashMap<>();

    public AllPosted(DSLContext sql) {
        this.sql = sql;
    }

    /**
     * As if the entry of that number were a site's newest.
     *
     * @param siteNo the site; of the others all that is posted counts
     */
    public AllPosted(DSLContext sql, int siteNo, long known) {
        this(sql);
        bySite.put(siteNo, Posted.upTo(sql, siteNo, known));
    }

    /** What counts at a site. */
    public Posted at(int siteNo) {
        return bySite.computeIfAbsent(siteNo, no -> Posted.of(sql, no));
    }

    /** Whether the fact on a line of a site's batch counts. */
    public boolean counts(int siteNo, long batch, int line) {
        return at(siteNo).counts(batch, line);
    }
}
