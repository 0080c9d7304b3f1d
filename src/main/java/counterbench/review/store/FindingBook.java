package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.review.FindingId;
import counterbench.review.Settlement;
import counterbench.review.Settlements;
import counterbench.review.StatedFinding;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

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
     * @param wanted which of them are asked for; memory holds no others
     * @param progress is told how many jobs have been judged
     */
    public List<StatedFinding> now(
            Site site, Instant now, Predicate<Finding> wanted, LongConsumer progress) {
        List<StatedFinding> findings = new ArrayList<>();
        eachNow(site, now, progress, stated -> addIf(wanted, stated, findings));
        return sorted(findings);
    }

    /**
     * As of a moment, with what was known at an entry.
     *
     * @param wanted which of them are asked for; memory holds no others
     * @param progress is told how many jobs have been judged
     */
    public List<StatedFinding> asOf(
            Site site, Instant asOf, long known, Predicate<Finding> wanted, LongConsumer progress) {
        List<StatedFinding> findings = new ArrayList<>();
        eachAsOf(site, asOf, known, progress, stated -> addIf(wanted, stated, findings));
        return sorted(findings);
    }

    private static void addIf(
            Predicate<Finding> wanted, StatedFinding stated, List<StatedFinding> findings) {
        if (wanted.test(stated.finding())) {
            findings.add(stated);
        }
    }

    private static List<StatedFinding> sorted(List<StatedFinding> findings) {
        return findings.stream().sorted(StatedFinding.BY_SUBJECT).toList();
    }

    /** Gives those of {@link #now} one by one, in any order. */
    public void eachNow(
            Site site, Instant now, LongConsumer progress, Consumer<StatedFinding> taker) {
        Settlements settled = settled(site, now, ReviewSite.NEWEST);
        new KeptReview(store).run(site, now, progress, f -> taker.accept(settled.stated(f)));
    }

    /** Gives those of {@link #asOf} one by one, in any order. */
    public void eachAsOf(
            Site site,
            Instant asOf,
            long known,
            LongConsumer progress,
            Consumer<StatedFinding> taker) {
        Settlements settled = settled(site, asOf, known);
        new ReviewSite(store)
                .run(site, asOf, known, progress, f -> taker.accept(settled.stated(f)));
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

    /** What people said at some places of the journal, what was taken back as well. */
    public List<Settlement> saidAt(Site site, Set<Address> where) {
        return store.read(sql -> SettlementReader.all(sql, site, ReviewSite.NEWEST)).stream()
                .filter(settlement -> where.contains(settlement.address()))
                .toList();
    }

    /** Everything that people said about a finding, what was taken back as well. */
    public List<Settlement> history(Site site, FindingId finding) {
        return store.read(sql -> SettlementReader.all(sql, site, ReviewSite.NEWEST)).stream()
                .filter(settlement -> settlement.finding().equals(finding))
                .toList();
    }
}
