package counterbench.acts.store;

import counterbench.acts.KitListing;
import counterbench.acts.KitState;
import counterbench.db.Store;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/** Every kit that a site ever had, wherever it is now. Goes through the whole site. */
public final class SiteKits {
    private final Store store;

    public SiteKits(Store store) {
        this.store = store;
    }

    /**
     * Those that are wanted, first to expire first.
     *
     * @param progress is told how many jobs have been gone through
     */
    public List<KitListing> list(
            Site site, Instant now, Predicate<KitListing> wanted, LongConsumer progress) {
        List<KitListing> found = new ArrayList<>();
        long[] jobs = {0};
        try (SiteScan scan = new SiteScan(store, site, now, ReviewSite.NEWEST)) {
            scan.all(
                    component -> {
                        KitState.allOf(component).stream()
                                .map(KitState::listing)
                                .filter(wanted)
                                .forEach(found::add);
                        jobs[0] += component.jobs().size();
                        progress.accept(jobs[0]);
                    });
        }
        found.sort(KitListing.FIRST_EXPIRED_FIRST);
        return found;
    }
}
