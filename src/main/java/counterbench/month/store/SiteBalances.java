package counterbench.month.store;

import counterbench.db.Store;
import counterbench.review.Component;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.BalanceRow;
import counterbench.stock.Balances;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * What every account of a site holds. Kits, benches and vehicles are given as they are read, so
 * that memory does not grow with jobs; what the whole site shares comes last.
 */
public final class SiteBalances {
    private final Store store;

    public SiteBalances(Store store) {
        this.store = store;
    }

    /** Gives every account and part that is not zero. */
    public void each(
            Site site,
            Instant asOf,
            long known,
            Predicate<Account> accounts,
            Consumer<BalanceRow> rows) {
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            Gathering gathering = new Gathering(accounts, rows);
            scan.all(gathering::take);
            gathering.finish(scan);
        }
    }

    /** Whether no other component can touch it; a plug may go on any job's core. */
    private static boolean ofOneComponent(Account account) {
        return account.isLocal() && account.kind() != Account.Kind.CORE;
    }

    private static final class Gathering {
        private final Predicate<Account> accounts;
        private final Consumer<BalanceRow> rows;
        private final Balances common;
        private final List<Move> storeMoves = new ArrayList<>();

        Gathering(Predicate<Account> accounts, Consumer<BalanceRow> rows) {
            this.accounts = accounts;
            this.rows = rows;
            this.common = new Balances(a -> !ofOneComponent(a) && accounts.test(a));
        }

        void take(Component component) {
            Balances own = new Balances(a -> ofOneComponent(a) && accounts.test(a));
            Ledger ledger = Ledger.of(component.facts());
            ledger.moves().forEach(own::add);
            addCommon(ledger.moves());
            own.rows().forEach(rows);
        }

        private void addCommon(List<Move> moves) {
            moves.forEach(common::add);
            moves.stream().filter(m -> m.touches(Account.STORE)).forEach(storeMoves::add);
        }

        void finish(SiteScan scan) {
            addCommon(Ledger.of(scan.storeOnly()).moves());
            StoreTimeline.ofAll(storeMoves, scan.looseCounts()).values().stream()
                    .flatMap(timeline -> timeline.countMoves().stream())
                    .forEach(common::add);
            common.rows().forEach(rows);
        }
    }
}
