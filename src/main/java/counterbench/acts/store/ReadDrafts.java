package counterbench.acts.store;

import counterbench.acts.JobState;
import counterbench.acts.Situation;
import counterbench.acts.desk.ClaimCase;
import counterbench.acts.desk.ClaimDraft;
import counterbench.acts.desk.InboundCosts;
import counterbench.claims.draft.Draft;
import counterbench.db.Store;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.Settlements;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreCosts;
import counterbench.stock.StoreMoves;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Predicate;

/**
 * Drafts claims for jobs that are done. Goes through the whole site, since what loose parts cost
 * depends on all that left the store before.
 */
public final class ReadDrafts {
    private final Store store;

    public ReadDrafts(Store store) {
        this.store = store;
    }

    /**
     * Drafts for jobs that are wanted, by day of completion.
     *
     * @param progress is told how many jobs have been gone through
     */
    public List<ClaimDraft> run(
            Site site, Instant now, Predicate<ClaimCase> wanted, LongConsumer progress) {
        try (SiteScan scan = new SiteScan(store, site, now, ReviewSite.NEWEST)) {
            Gathering gathering = new Gathering(scan, wanted, progress);
            scan.all(Function.identity(), gathering::take);
            return gathering.drafts();
        }
    }

    /** What is gathered on the way through the components. */
    private final class Gathering {
        private final SiteScan scan;
        private final Predicate<ClaimCase> wanted;
        private final LongConsumer progress;
        private final JooqDirectory directory;
        private final StoreMoves moves = new StoreMoves();
        private final List<ClaimCase> cases = new ArrayList<>();
        private long jobs;

        Gathering(SiteScan scan, Predicate<ClaimCase> wanted, LongConsumer progress) {
            this.scan = scan;
            this.wanted = wanted;
            this.progress = progress;
            this.directory = new JooqDirectory(store, scan.site(), scan.asOf());
        }

        void take(Component component) {
            moves.add(Ledger.of(component.facts()));
            for (JobFile file : component.jobs()) {
                if (file.job() != null && !file.job().isOpen()) {
                    take(component, file);
                }
            }
            jobs += component.jobs().size();
            progress.accept(jobs);
        }

        private void take(Component component, JobFile file) {
            JobState state =
                    new Situation(
                                    scan.site(),
                                    scan.asOf(),
                                    scan.terms(),
                                    List.of(component),
                                    Map.of(),
                                    directory)
                            .job(file.name());
            ClaimCase.of(state).filter(wanted).ifPresent(cases::add);
        }

        List<ClaimDraft> drafts() {
            if (cases.isEmpty()) {
                return List.of();
            }
            List<Move> all = moves.all(Ledger.of(scan.storeOnly()), scan.looseCounts());
            StoreCosts costs =
                    StoreCosts.of(all, new InboundCosts(scan.terms(), directory::costElsewhere));
            Settlements settled = directory.settlements();
            return cases.stream()
                    .map(found -> drafted(found, found.draft(costs, directory), settled))
                    .sorted(ClaimDraft.ORDER)
                    .toList();
        }

        private ClaimDraft drafted(ClaimCase found, Draft draft, Settlements settled) {
            return new ClaimDraft(draft, found.against(scan.site().dayOf(scan.asOf()), settled));
        }
    }
}
