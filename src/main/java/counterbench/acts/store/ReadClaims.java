package counterbench.acts.store;

import static counterbench.db.generated.Tables.CLAIMS_FACT;

import counterbench.acts.desk.ClaimLine;
import counterbench.claims.Standing;
import counterbench.db.Store;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/** Looks up claims with their credits. */
public final class ReadClaims {
    private final Store store;

    public ReadClaims(Store store) {
        this.store = store;
    }

    /**
     * Those that are wanted, by day of submission.
     *
     * @param progress is told how many jobs have been gone through
     */
    public List<ClaimLine> list(
            Site site, Instant now, Predicate<ClaimLine> wanted, LongConsumer progress) {
        List<ClaimLine> found = new ArrayList<>();
        long[] jobs = {0};
        try (SiteScan scan = new SiteScan(store, site, now, ReviewSite.NEWEST)) {
            scan.all(
                    component -> {
                        lines(component).stream().filter(wanted).forEach(found::add);
                        jobs[0] += component.jobs().size();
                        progress.accept(jobs[0]);
                    });
        }
        found.sort(ClaimLine.ORDER);
        return found;
    }

    private static List<ClaimLine> lines(Component component) {
        List<ClaimLine> lines = new ArrayList<>();
        for (JobFile file : component.jobs()) {
            file.claims()
                    .forEach(
                            claim ->
                                    lines.add(
                                            new ClaimLine(
                                                    Standing.of(claim, file.credits()),
                                                    file.job())));
        }
        return lines;
    }

    /** The job of a claim, if there is a claim of that number. */
    public Optional<String> jobOf(Site site, String claim) {
        return store.read(
                sql ->
                        sql
                                .selectDistinct(CLAIMS_FACT.JOB)
                                .from(CLAIMS_FACT)
                                .where(
                                        CLAIMS_FACT.SITE_NO.eq((short) site.no()),
                                        CLAIMS_FACT.CLAIM.eq(claim))
                                .orderBy(CLAIMS_FACT.JOB)
                                .limit(1)
                                .fetch(CLAIMS_FACT.JOB)
                                .stream()
                                .findFirst());
    }

    /** The numbers of the site's claims. */
    public List<String> numbers(Site site, Instant now) {
        return new JooqDirectory(store, site, now).claims();
    }
}
