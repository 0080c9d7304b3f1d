package counterbench.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Gathers all moves that touch the loose store of a site, those of counts among them. */
public final class StoreMoves {
    /** In order of time; at one instant what comes in, what goes out, counts. */
    public static final Comparator<Move> ORDER =
            Comparator.comparing(Move::at)
                    .thenComparing(StoreMoves::place)
                    .thenComparing(Move::fact);

    private final List<Move> moves = new ArrayList<>();

    private static int place(Move move) {
        if (move.touches(Account.COUNT)) {
            return 2;
        }
        return move.to().equals(Account.STORE) ? 0 : 1;
    }

    /** Adds those of a component. */
    public void add(Ledger ledger) {
        ledger.moves().stream().filter(m -> m.touches(Account.STORE)).forEach(moves::add);
    }

    /** All of them, in order, once what the site shares has come. */
    public List<Move> all(Ledger shared, Collection<Count> counts) {
        add(shared);
        List<Move> all = new ArrayList<>(moves);
        StoreTimeline.ofAll(moves, counts)
                .values()
                .forEach(timeline -> all.addAll(timeline.countMoves()));
        all.sort(ORDER);
        return all;
    }

    /**
     * Whether it brings loose parts back from a job; what came out of a kit is new to the store.
     */
    public static boolean isPutBack(Move move) {
        return move.to().equals(Account.STORE)
                && move.from().kind() == Account.Kind.BENCH
                && move.source().kind() != Source.Kind.KIT;
    }
}
