package counterbench.review.store;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.review.JudgeComponent;
import counterbench.review.JudgeSite;
import counterbench.review.JudgedComponent;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
     * Every finding of every rule.
     *
     * @param progress is told how many jobs have been judged
     */
    public List<Finding> run(Site site, Instant asOf, long known, LongConsumer progress) {
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            Gathering gathering = new Gathering(scan, progress);
            scan.all(gathering::take);
            return gathering.all();
        }
    }

    /** What is gathered on the way through the components. */
    private static final class Gathering {
        private final SiteScan scan;
        private final JudgeComponent judge;
        private final LongConsumer progress;
        private final Findings findings = new Findings();
        private final List<Move> storeMoves = new ArrayList<>();
        private final Set<String> doubtful = new TreeSet<>();
        private long jobs;

        Gathering(SiteScan scan, LongConsumer progress) {
            this.scan = scan;
            this.progress = progress;
            this.judge = new JudgeComponent(scan.site(), scan.terms(), scan.asOf());
        }

        void take(counterbench.review.Component component) {
            JudgedComponent judged = judge.judge(component);
            judged.findings().values().forEach(of -> of.forEach(findings::add));
            judged.ofKits().forEach(findings::add);
            judged.ledger().moves().stream()
                    .filter(m -> m.touches(Account.STORE))
                    .forEach(storeMoves::add);
            doubtful.addAll(judged.doubtfulShipments());
            jobs += component.jobs().size();
            progress.accept(jobs);
        }

        List<Finding> all() {
            storeMoves.addAll(Ledger.of(scan.storeOnly()).moves());
            JudgeSite.store(
                    scan.site(),
                    StoreTimeline.ofAll(storeMoves, scan.looseCounts()).values(),
                    findings);
            scan.eachCreditOfNoClaim(credit -> JudgeSite.credit(credit, findings));
            doubtful.addAll(scan.shipmentsWithUnknownCores());
            scan.shipments(doubtful).forEach(shipment -> JudgeSite.shipment(shipment, findings));
            return findings.found();
        }
    }
}
