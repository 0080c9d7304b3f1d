package counterbench.month.store;

import counterbench.db.Store;
import counterbench.job.rules.HardwareFacts;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.SealReader;
import counterbench.month.MonthAccount;
import counterbench.review.Component;
import counterbench.review.HardwareOfJobs;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.function.LongConsumer;

/** Works out a month's account of a site, as of a moment and as known at an entry. */
public final class ReconcileMonth {
    private final Store store;

    public ReconcileMonth(Store store) {
        this.store = store;
    }

    /**
     * The account of all campaigns.
     *
     * @param known the entry that was the newest; {@link
     *     counterbench.review.store.ReviewSite#NEWEST} for all
     * @param progress is told how many jobs have been gone through
     */
    public MonthAccount run(
            Site site, YearMonth month, Instant asOf, long known, LongConsumer progress) {
        SealedMonths sealed = store.read(sql -> SealReader.upTo(sql, site.no(), known));
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            Gathering gathering = new Gathering(scan, month, sealed, progress);
            scan.all(gathering::work, gathering::take);
            OpeningScan.fill(store, site, month, sealed, gathering.account, move -> {});
            gathering.account.addStore(Ledger.of(scan.storeOnly()), scan.looseCounts());
            return gathering.account;
        }
    }

    /** A component with what follows from it alone. */
    private record Worked(Component component, Ledger ledger, List<HardwareFacts> completed) {}

    /** What is gathered on the way through the components. */
    private static final class Gathering {
        private final HardwareOfJobs hardware;
        private final MonthAccount account;
        private final LongConsumer progress;
        private long jobs;

        Gathering(SiteScan scan, YearMonth month, SealedMonths sealed, LongConsumer progress) {
            this.hardware = new HardwareOfJobs(scan.site(), scan.terms(), scan.asOf());
            this.account = new MonthAccount(scan.site(), month, scan.terms().packs(), sealed);
            this.progress = progress;
        }

        Worked work(Component component) {
            Ledger ledger = Ledger.of(component.facts());
            return new Worked(component, ledger, hardware.completed(component, ledger));
        }

        void take(Worked worked) {
            Component component = worked.component();
            account.addComponent(worked.ledger(), worked.completed(), component.facts().ends());
            jobs += component.jobs().size();
            progress.accept(jobs);
        }
    }
}
