package counterbench.review.store;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
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
            Optional<List<Finding>> stops =
                    review.kept(site, sql -> KeptFindings.of(sql, site, Severity.STOP));
            if (stops.isEmpty()) {
                return OptionalInt.empty();
            }
            known = new Counted(standing, open(site, now, stops.get()));
            last = known;
        }
        return OptionalInt.of(known.open());
    }

    private static Standing standing(DSLContext sql, Site site) {
        long newest = EntryReader.newest(sql, site.no(), 1).stream().mapToLong(Entry::number).sum();
        return new Standing(site, KeptReview.stamp(sql, site), newest);
    }

    private int open(Site site, Instant now, List<Finding> stops) {
        return Math.toIntExact(
                new FindingBook(store)
                        .settled(site, now, ReviewSite.NEWEST).state(stops).stream()
                                .filter(stated -> stated.state() == FindingState.OPEN)
                                .count());
    }
}
