package counterbench.care.store;

import counterbench.journal.store.AllPosted;
import counterbench.journal.store.Posted;
import counterbench.journal.store.Verification;
import counterbench.shared.Site;
import java.util.Optional;
import org.jooq.DSLContext;

/**
 * Finds facts that name what is not there, or that lie where nobody looks for them. The hashes do
 * not cover keys and lookups, which could be changed behind the program's back as well.
 */
final class References {
    private References() {}

    /** The first of a site, by its place in the journal. */
    static Optional<Verification.Broken> firstBroken(DSLContext sql, Site site) {
        AllPosted posted = new AllPosted(sql);
        return firstBroken(sql, site, posted.at(site.no()), posted::counts);
    }

    /** The first of a site, if only some facts counted. */
    static Optional<Verification.Broken> firstBroken(
            DSLContext sql, Site site, Posted posted, CountingRows.Counting counting) {
        FirstBroken broken = new FirstBroken(posted);
        CountingRows rows = new CountingRows(sql, site, counting);
        JobReferences jobs = new JobReferences(rows, broken);
        jobs.check(LookupReferences.campaigns(rows));
        new CoreReferences(rows, jobs, broken).check();
        new LookupReferences(rows, broken).check();
        return broken.found();
    }
}
