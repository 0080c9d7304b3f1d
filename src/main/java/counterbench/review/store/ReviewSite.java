package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.review.JudgedComponent;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
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
     * Every finding of every rule, in the order of finding.
     *
     * @param progress is told how many jobs have been judged
     */
    public List<Finding> run(Site site, Instant asOf, long known, LongConsumer progress) {
        List<Finding> found = new ArrayList<>();
        run(site, asOf, known, progress, found::add);
        return found;
    }

    /**
     * Gives every finding of every rule, in the order of finding.
     *
     * @param progress is told how many jobs have been judged
     */
    public void run(
            Site site,
            Instant asOf,
            long known,
            LongConsumer progress,
            Consumer<Finding> findings) {
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            run(scan, progress, findings, judged -> {});
        }
    }

    /**
     * Judges what a scan gives.
     *
     * @param progress is told how many jobs have been judged
     * @param findings is given every finding
     * @param components is given each component, after all that was found of its jobs
     */
    public void run(
            SiteScan scan,
            LongConsumer progress,
            Consumer<Finding> findings,
            Consumer<JudgedComponent> components) {
        Outcome outcome = new OutcomeToTell(findings);
        new Judging(store, scan.site(), scan.asOf(), outcome, components, progress).all(scan);
    }
}
