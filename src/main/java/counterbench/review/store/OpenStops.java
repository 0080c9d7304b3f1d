package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;

/** Counts a site's open findings of severity stop, in passing. */
public final class OpenStops {
    private final Store store;

    public OpenStops(Store store) {
        this.store = store;
    }

    /** How many there are now; empty where much would have to be judged first. */
    public OptionalInt count(Site site, Instant now) {
        if (!new KeptReview(store).catchUpIfLittle(site, now)) {
            return OptionalInt.empty();
        }
        List<Finding> stops = store.read(sql -> KeptFindings.of(sql, site, Severity.STOP));
        long open =
                new FindingBook(store)
                        .settled(site, now, ReviewSite.NEWEST).state(stops).stream()
                                .filter(stated -> stated.state() == FindingState.OPEN)
                                .count();
        return OptionalInt.of(Math.toIntExact(open));
    }
}
