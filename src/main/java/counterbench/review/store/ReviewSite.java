package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.function.LongConsumer;

/** Judges all of a site, as of a moment and as known at an entry. Keeps nothing. */
public final class ReviewSite {
    /** Stands for the newest entry. */
    public static final long NEWEST = Long.MAX_VALUE;

    private final Store store;

    public ReviewSite(Store store) {
        this.store = store;
    }

    /**
     * Every finding of every rule.
     *
     * @param progress is told how many jobs have been judged
     */
    public List<Finding> run(Site site, Instant asOf, long known, LongConsumer progress) {
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            Judging judging = new Judging(store, site, asOf, progress);
            judging.all(scan);
            return judging.findings();
        }
    }
}
