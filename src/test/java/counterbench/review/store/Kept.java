package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a kept review gave, in a list.
 *
 * @param judgedAgain how many jobs were judged for it
 */
public record Kept(List<Finding> findings, long judgedAgain) {
    /** Reviews a site as of now. */
    public static Kept review(Store store, Site site, Instant now) {
        return review(new KeptReview(store), site, now);
    }

    static Kept review(KeptReview review, Site site, Instant now) {
        List<Finding> findings = new ArrayList<>();
        long judgedAgain = review.run(site, now, n -> {}, findings::add);
        return new Kept(findings, judgedAgain);
    }

    /** What is kept already; empty where that is not whole. */
    static Optional<List<Finding>> read(KeptReview review, Site site) {
        List<Finding> findings = new ArrayList<>();
        boolean isRead = review.isRead(site, sql -> KeptFindings.each(sql, site, findings::add));
        return isRead ? Optional.of(findings) : Optional.empty();
    }
}
