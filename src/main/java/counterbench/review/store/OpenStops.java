package counterbench.review.store;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.judgement.Severity;
import counterbench.review.Settlements;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/**
 * Counts a site's open findings of severity stop, in passing. One that is kept counts again only
 * what changed.
 */
public final class OpenStops {
    private final Store store;
    private @Nullable Counted last;

    public OpenStops(Store store) {
        this.store = store;
    }

    /** How many there were when the site stood so. */
    private record Counted(Standing standing, int open) {}

    /** What the count follows from: findings as of a stamp, settlements up to an entry. */
    private record Standing(Site site, long stamp, long newestEntry) {}

    /** How many there are now; empty where much would have to be judged first. */
    public OptionalInt count(Site site, Instant now) {
        KeptReview review = new KeptReview(store);
        if (!review.catchUpIfLittle(site, now)) {
            return OptionalInt.empty();
        }
        Standing standing = store.read(sql -> standing(sql, site));
        Counted known = last;
        if (known == null || !known.standing().equals(standing)) {
            int[] open = {0};
            Settlements settled = new FindingBook(store).settled(site, now, ReviewSite.NEWEST);
            boolean isRead =
                    review.isRead(
                            site,
                            sql ->
                                    KeptFindings.each(
                                            sql,
                                            site,
                                            Severity.STOP,
                                            stop -> open[0] += settled.of(stop).isEmpty() ? 1 : 0));
            if (!isRead) {
                return OptionalInt.empty();
            }
            known = new Counted(standing, open[0]);
            last = known;
        }
        return OptionalInt.of(known.open());
    }

    private static Standing standing(DSLContext sql, Site site) {
        long newest = EntryReader.newest(sql, site.no(), 1).stream().mapToLong(Entry::number).sum();
        return new Standing(site, KeptReview.stamp(sql, site), newest);
    }
}
