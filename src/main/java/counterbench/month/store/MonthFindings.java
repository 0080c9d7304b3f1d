package counterbench.month.store;

import counterbench.db.Store;
import counterbench.journal.Seal;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.SealReader;
import counterbench.judgement.Finding;
import counterbench.review.FindingId;
import counterbench.review.Settlements;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/**
 * The findings that count in a month. A sealed month has those that were known at its seal; what
 * turns up about sealed months later counts in the first open one.
 */
public final class MonthFindings {
    private final Store store;
    private final Site site;
    private final SealedMonths sealed;
    private final long newest;

    public MonthFindings(Store store, Site site) {
        this(store, site, Long.MAX_VALUE);
    }

    /**
     * @param known the entry that counts as the newest
     */
    public MonthFindings(Store store, Site site, long known) {
        this.store = store;
        this.site = site;
        this.newest = known;
        this.sealed = store.read(sql -> SealReader.upTo(sql, site.no(), known));
    }

    /** The months that are closed. */
    public SealedMonths sealed() {
        return sealed;
    }

    /** Gives the findings of a month: of a sealed one as at its seal, of another one as of now. */
    public void each(
            YearMonth month, Instant now, LongConsumer progress, Consumer<StatedFinding> taker) {
        Consumer<StatedFinding> counting = counting(month, taker);
        FindingBook book = new FindingBook(store);
        sealed.of(month)
                .ifPresentOrElse(
                        seal -> book.eachAsOf(site, seal.at(), seal.entry(), progress, counting),
                        () -> book.eachNow(site, now, progress, counting));
    }

    private Consumer<StatedFinding> counting(YearMonth month, Consumer<StatedFinding> taker) {
        Predicate<Finding> counts = countsIn(month);
        return stated -> {
            if (counts.test(stated.finding())) {
                taker.accept(stated);
            }
        };
    }

    /** The findings of a month with all that is known; keeps nothing, and so waits for nobody. */
    List<StatedFinding> ofOpen(YearMonth month, Instant at) {
        return new FindingBook(store)
                .asOf(site, at, ReviewSite.NEWEST, countsIn(month), jobs -> {});
    }

    /** Says which findings count in a month. */
    public Predicate<Finding> countsIn(YearMonth month) {
        Optional<Seal> before = sealed.before(month);
        if (before.isEmpty()) {
            return finding -> month.equals(finding.month());
        }
        Set<Known> known = known(before.get());
        return finding ->
                month.equals(finding.month())
                        || (isBefore(finding, month) && !known.contains(Known.of(finding)));
    }

    private static boolean isBefore(Finding finding, YearMonth month) {
        return finding.month() != null && finding.month().isBefore(month);
    }

    /** What the seal has closed; what was settled for it and is so no more, counts again. */
    private Set<Known> known(Seal seal) {
        FindingBook book = new FindingBook(store);
        Settlements then = book.settled(site, seal.at(), seal.entry());
        Settlements now = book.settled(site, Instant.MAX, newest);
        Set<Known> known = new HashSet<>();
        new ReviewSite(store)
                .run(
                        site,
                        seal.at(),
                        seal.entry(),
                        jobs -> {},
                        finding -> {
                            if (then.of(finding).isEmpty() || now.of(finding).isPresent()) {
                                known.add(Known.of(finding));
                            }
                        });
        return known;
    }

    private record Known(FindingId id, String evidence) {
        static Known of(Finding finding) {
            return new Known(FindingId.of(finding), finding.evidence());
        }
    }
}
