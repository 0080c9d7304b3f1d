package counterbench.acts;

import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Move;
import counterbench.stock.Source;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What lies loose in the store of one part.
 *
 * @param timeline the part's store account over time, with its counts
 * @param moves all that touch the store, those of counts included, in order of time
 */
public record Shelf(String part, StoreTimeline timeline, List<Move> moves) {
    public Shelf {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(timeline, "timeline");
        moves = moves.stream().sorted(Comparator.comparing(Move::at)).toList();
    }

    /** Of a timeline and the moves that it was made of. */
    public static Shelf of(StoreTimeline timeline, Collection<Move> moves) {
        List<Move> all = new ArrayList<>(moves);
        all.addAll(timeline.countMoves());
        return new Shelf(timeline.part(), timeline, all);
    }

    /** Of a part that the store never held. */
    public static Shelf empty(String part) {
        return of(StoreTimeline.of(part, List.of(), List.of()), List.of());
    }

    /** What is there, by lot, in order of arrival. */
    public List<Holding> holdings() {
        return Holding.in(Account.STORE, moves);
    }

    /** How much can be taken at a time without the store's going below zero then or later. */
    public Quantity free(Instant at) {
        return Holding.free(Account.STORE, moves, at, move -> true);
    }

    /** How much of one lot can be taken at a time. */
    public Quantity free(Instant at, Source source) {
        return Holding.free(Account.STORE, moves, at, move -> move.source().equals(source));
    }
}
