package counterbench.care.store;

import counterbench.db.Store;
import counterbench.journal.store.Verification;
import counterbench.review.store.SiteScan;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Adds up every part over all accounts of a site, which makes zero, and what lies loose in the
 * store in two ways, which makes the same.
 */
final class SumsOfParts {
    private final Map<String, Quantity> sums = new TreeMap<>();
    private final Map<String, Quantity> loose = new TreeMap<>();
    private final Map<String, Long> firstEntries = new TreeMap<>();
    private final List<Move> ofStore = new ArrayList<>();

    private SumsOfParts() {}

    /** The entry that first moved a part whose sums are not as they must be. */
    static Optional<Verification.Broken> firstBroken(Store store, Site site, Instant now) {
        SumsOfParts sums = new SumsOfParts();
        try (SiteScan scan = new SiteScan(store, site, now, Long.MAX_VALUE)) {
            scan.all(component -> sums.take(Ledger.of(component.facts()).moves()));
            sums.take(Ledger.of(scan.storeOnly()).moves());
            Collection<StoreTimeline> timelines =
                    StoreTimeline.ofAll(sums.ofStore, scan.looseCounts()).values();
            timelines.forEach(timeline -> sums.take(timeline.countMoves()));
            return sums.firstBroken(timelines);
        }
    }

    private void take(List<Move> moves) {
        for (Move move : moves) {
            add(sums, move.part(), signed(move, move.to()).plus(signed(move, move.from())));
            firstEntries.merge(move.part(), move.fact().entry(), Math::min);
            if (move.touches(Account.STORE)) {
                add(loose, move.part(), signed(move, Account.STORE));
                ofStore.add(move);
            }
        }
    }

    private static void add(Map<String, Quantity> to, String part, Quantity quantity) {
        to.merge(part, quantity, Quantity::plus);
    }

    private static Quantity signed(Move move, Account account) {
        return move.to().equals(account) ? move.quantity() : move.quantity().negate();
    }

    private Optional<Verification.Broken> firstBroken(Collection<StoreTimeline> timelines) {
        for (StoreTimeline timeline : timelines) {
            Quantity held = loose.getOrDefault(timeline.part(), Quantity.ZERO);
            if (!held.equals(timeline.balance())) {
                return broken(
                        timeline.part(),
                        "lies in the store as " + held + " and as " + timeline.balance());
            }
        }
        for (Map.Entry<String, Quantity> sum : sums.entrySet()) {
            if (!sum.getValue().isZero()) {
                return broken(sum.getKey(), "adds up to " + sum.getValue() + " over all accounts");
            }
        }
        return Optional.empty();
    }

    private Optional<Verification.Broken> broken(String part, String why) {
        return Optional.of(
                new Verification.Broken(
                        firstEntries.getOrDefault(part, 1L), "part " + part + " " + why));
    }
}
