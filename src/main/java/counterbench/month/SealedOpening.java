package counterbench.month;

import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Takes the moves that were known when the month before was sealed. */
public final class SealedOpening {
    private final Site site;
    private final YearMonth month;
    private final Goods goods;
    private final List<Move> storeMoves = new ArrayList<>();

    SealedOpening(Site site, YearMonth month, Goods goods) {
        this.site = site;
        this.month = month;
        this.goods = goods;
    }

    /** Adds moves of a component. */
    public void add(Ledger ledger) {
        ledger.moves().forEach(this::add);
    }

    private void add(Move move) {
        if (move.touches(Account.STORE)) {
            storeMoves.add(move);
        }
        book(move);
    }

    private void book(Move move) {
        if (site.monthOf(move.at()).isBefore(month)) {
            goods.addBefore(move);
        }
    }

    /** Adds the moves of the loose store and its counts; call it once, after all components. */
    public void addStore(Ledger store, Collection<Count> counts) {
        store.moves().forEach(this::add);
        StoreTimeline.ofAll(storeMoves, counts).values().stream()
                .flatMap(timeline -> timeline.countMoves().stream())
                .forEach(this::book);
    }
}
