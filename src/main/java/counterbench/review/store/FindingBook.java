package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.review.FindingId;
import counterbench.review.Settlement;
import counterbench.review.Settlements;
import counterbench.review.StatedFinding;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.function.LongConsumer;

/** The findings of a site with what people have settled. */
public final class FindingBook {
    private final Store store;

    public FindingBook(Store store) {
        this.store = store;
    }

    /**
     * As of now, with all that is known; judges only what has changed since the last time.
     *
     * @param now the clock's time, which never goes back from one call to the next
     * @param progress is told how many jobs have been judged
     */
    public List<StatedFinding> now(Site site, Instant now, LongConsumer progress) {
        List<Finding> found = new KeptReview(store).run(site, now, progress).findings();
        return settled(site, now, ReviewSite.NEWEST).state(found);
    }

    /**
     * As of a moment, with what was known at an entry; in the order of subjects.
     *
     * @param progress is told how many jobs have been judged
     */
    public List<StatedFinding> asOf(Site site, Instant asOf, long known, LongConsumer progress) {
        List<Finding> found = new ReviewSite(store).run(site, asOf, known, progress);
        return settled(site, asOf, known).state(found);
    }

    /** The names of some findings as they were last found, those of the newest jobs. */
    public List<FindingId> lastFound(Site site, int most) {
        return store.read(sql -> KeptFindings.newest(sql, site, most)).stream()
                .map(FindingId::of)
                .toList();
    }

    /** What people have settled by a moment, as known at an entry. */
    public Settlements settled(Site site, Instant asOf, long known) {
        return new Settlements(
                store.read(sql -> SettlementReader.all(sql, site, known)).stream()
                        .filter(settlement -> !settlement.at().isAfter(asOf))
                        .toList());
    }

    /** Everything that people said about a finding, what was taken back as well. */
    public List<Settlement> history(Site site, FindingId finding) {
        return store.read(sql -> SettlementReader.all(sql, site, ReviewSite.NEWEST)).stream()
                .filter(settlement -> settlement.finding().equals(finding))
                .toList();
    }
}
