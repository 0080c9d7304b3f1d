package counterbench.month.store;

import counterbench.db.Store;
import counterbench.journal.Seal;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.Posted;
import counterbench.month.MonthAccount;
import counterbench.month.SealedOpening;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import java.time.YearMonth;
import java.util.function.Consumer;

/** Reads what a month opens with, where the month before is sealed: as known at that seal. */
final class OpeningScan {
    private OpeningScan() {}

    /**
     * Fills the opening of the first open month after a seal.
     *
     * @param takenBack is told the moves of sealed months whose facts were reversed since
     */
    static void fill(
            Store store,
            Site site,
            YearMonth month,
            SealedMonths sealed,
            MonthAccount account,
            Consumer<Move> takenBack) {
        sealed.before(month)
                .ifPresent(seal -> fill(store, site, month, seal, account.opening(), takenBack));
    }

    private static void fill(
            Store store,
            Site site,
            YearMonth month,
            Seal seal,
            SealedOpening opening,
            Consumer<Move> takenBack) {
        Posted now = store.read(sql -> Posted.of(sql, site.no()));
        Consumer<Ledger> backs =
                ledger ->
                        ledger.moves().stream()
                                .filter(m -> site.monthOf(m.at()).isBefore(month))
                                .filter(m -> now.isReversed(m.fact().entry(), m.fact().line()))
                                .forEach(takenBack);
        try (SiteScan scan = new SiteScan(store, site, seal.at(), seal.entry())) {
            scan.all(
                    component -> Ledger.of(component.facts()),
                    ledger -> {
                        opening.add(ledger);
                        backs.accept(ledger);
                    });
            Ledger loose = Ledger.of(scan.storeOnly());
            opening.addStore(loose, scan.looseCounts());
            backs.accept(loose);
        }
    }
}
