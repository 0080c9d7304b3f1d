package counterbench.stock;

import counterbench.shared.Quantity;
import counterbench.stock.Posting.Phase;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The loose stock of one part at a site over time: every move that touches the store, from all
 * components and from receipts and other store facts, with the counts of the part between them.
 *
 * <p>A count stores what was counted. The move between the store and {@link Account#COUNT} is the
 * difference to the book at its time, derived anew whenever more paper comes.
 *
 * @param countMoves the moves that the counts make
 * @param differences counts that differ from the book
 * @param belowZero the first time that the store held less than nothing
 * @param balance what the store holds once all is done
 */
public record StoreTimeline(
        String part,
        List<Move> countMoves,
        List<CountDifference> differences,
        Optional<BelowZero> belowZero,
        Quantity balance) {
    public StoreTimeline {
        Objects.requireNonNull(part, "part");
        countMoves = List.copyOf(countMoves);
        differences = List.copyOf(differences);
        Objects.requireNonNull(belowZero, "belowZero");
        Objects.requireNonNull(balance, "balance");
    }

    /**
     * Goes through moves and counts in order of time, whatever order they are given in.
     *
     * @param moves those of the part that touch the store
     * @param counts those of the part
     * @throws IllegalArgumentException if one of them is of another part or touches no store
     */
    public static StoreTimeline of(String part, Collection<Move> moves, Collection<Count> counts) {
        return new Run(part, moves, counts).timeline();
    }

    /**
     * One timeline for each part that touched the store or was counted, by part number.
     *
     * @param moves any moves; those that touch no store do not matter
     * @param counts any counts; those of kits do not matter
     */
    public static SortedMap<String, StoreTimeline> ofAll(
            Collection<Move> moves, Collection<Count> counts) {
        Map<String, List<Move>> movesOfPart =
                moves.stream()
                        .filter(m -> m.touches(Account.STORE))
                        .collect(Collectors.groupingBy(Move::part));
        Map<String, List<Count>> countsOfPart = new HashMap<>();
        for (Count count : counts) {
            if (count.part() != null) {
                countsOfPart.computeIfAbsent(count.part(), p -> new ArrayList<>()).add(count);
            }
        }
        SortedSet<String> parts = new TreeSet<>(movesOfPart.keySet());
        parts.addAll(countsOfPart.keySet());
        SortedMap<String, StoreTimeline> timelines = new TreeMap<>();
        for (String part : parts) {
            List<Move> ofPart = movesOfPart.getOrDefault(part, List.of());
            timelines.put(part, of(part, ofPart, countsOfPart.getOrDefault(part, List.of())));
        }
        return timelines;
    }

    private static final class Run {
        private final String part;
        private final Book book = new Book();
        private final List<CountDifference> differences = new ArrayList<>();
        private final List<Posting> postings = new ArrayList<>();

        Run(String part, Collection<Move> moves, Collection<Count> counts) {
            this.part = part;
            moves.forEach(this::post);
            counts.forEach(this::post);
        }

        StoreTimeline timeline() {
            Collections.sort(postings);
            postings.forEach(posting -> posting.act().run());
            List<Move> countMoves =
                    book.moves().stream().filter(m -> m.touches(Account.COUNT)).toList();
            Optional<BelowZero> belowZero =
                    BelowZero.in(book.moves(), Account.STORE::equals).stream().findFirst();
            Quantity balance = book.held(Account.STORE, part);
            return new StoreTimeline(part, countMoves, differences, belowZero, balance);
        }

        private void post(Move move) {
            refuseUnless(move.part(), move.touches(Account.STORE));
            Book.Pen pen = new Book.Pen(book, move.at(), move.fact());
            Runnable act =
                    () -> pen.move(move.from(), move.to(), part, move.source(), move.quantity());
            postings.add(new Posting(move.at(), Phase.USE, move.fact(), act));
        }

        private void post(Count count) {
            refuseUnless(count.part(), true);
            Book.Pen pen = new Book.Pen(book, count.countedAt(), count.address());
            postings.add(
                    new Posting(
                            count.countedAt(),
                            Phase.COUNT,
                            count.address(),
                            () -> settle(count, pen)));
        }

        private void refuseUnless(@Nullable String named, boolean touchesStore) {
            if (!part.equals(named) || !touchesStore) {
                throw new IllegalArgumentException(
                        "part " + named + " in the store's timeline of " + part);
            }
        }

        private void settle(Count count, Book.Pen pen) {
            Quantity held = book.held(Account.STORE, part);
            Quantity difference = count.quantity().minus(held);
            if (difference.isZero()) {
                return;
            }
            differences.add(
                    new CountDifference(
                            Account.STORE,
                            part,
                            count.countedAt(),
                            count.address(),
                            count.quantity(),
                            held));
            if (difference.isPositive()) {
                pen.move(Account.COUNT, Account.STORE, part, Source.LOOSE, difference);
            } else {
                pen.draw(Account.STORE, Account.COUNT, part, null, difference.negate());
            }
        }
    }
}
