package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The balances while the facts are gone through in order of time, and the moves made so far. */
final class Book {
    private final Map<Account, Map<String, Map<Source, Quantity>>> balances = new LinkedHashMap<>();
    private final List<Move> moves = new ArrayList<>();

    /** One act's writing in the book. */
    record Pen(Book book, Instant at, Address fact) {
        /** Moves exactly that, whether or not it is there; nothing if the quantity is zero. */
        void move(Account from, Account to, String part, Source source, Quantity quantity) {
            if (quantity.isPositive()) {
                book.post(new Move(at, fact, from, to, part, source, quantity));
            } else if (quantity.isNegative()) {
                book.post(new Move(at, fact, to, from, part, source, quantity.negate()));
            }
        }

        /**
         * Moves so much of a part from whatever sources there are, in order of arrival, the
         * preferred one first; what is not there is taken from the preferred source all the same.
         */
        void draw(
                Account from, Account to, String part, @Nullable Source preferred, Quantity want) {
            Source last = preferred == null ? Source.LOOSE : preferred;
            Quantity rest = want.minus(take(from, to, part, last, want));
            for (Source source : List.copyOf(book.sources(from, part).keySet())) {
                rest = rest.minus(take(from, to, part, source, rest));
            }
            move(from, to, part, last, rest);
        }

        /** Moves at most so much of what is there, and says how much it was. */
        Quantity take(Account from, Account to, String part, Source source, Quantity want) {
            Quantity there = book.held(from, part, source);
            Quantity taken = there.isPositive() ? there.min(want) : Quantity.ZERO;
            move(from, to, part, source, taken);
            return taken;
        }

        /** Moves all that an account holds of every part; what it owes it goes on owing. */
        void empty(Account from, Account to) {
            for (Holding holding : book.holdings(from)) {
                take(from, to, holding.part(), holding.source(), holding.quantity());
            }
        }
    }

    /** What an account holds of one part from one source; below zero if it owes it. */
    record Holding(String part, Source source, Quantity quantity) {}

    private void post(Move move) {
        moves.add(move);
        add(move.from(), move.part(), move.source(), move.quantity().negate());
        add(move.to(), move.part(), move.source(), move.quantity());
    }

    private void add(Account account, String part, Source source, Quantity quantity) {
        Map<Source, Quantity> sources =
                balances.computeIfAbsent(account, a -> new TreeMap<>())
                        .computeIfAbsent(part, p -> new LinkedHashMap<>());
        Quantity sum = sources.getOrDefault(source, Quantity.ZERO).plus(quantity);
        if (sum.isZero()) {
            sources.remove(source);
        } else {
            sources.put(source, sum);
        }
    }

    /** All moves so far, in order. */
    List<Move> moves() {
        return moves;
    }

    /** The accounts of a kind that were ever touched, in order of first touch. */
    List<Account> accounts(Account.Kind kind) {
        return balances.keySet().stream().filter(a -> a.kind() == kind).toList();
    }

    /** What an account holds of a part from a source. */
    Quantity held(Account account, String part, Source source) {
        return sources(account, part).getOrDefault(source, Quantity.ZERO);
    }

    /** What an account holds of a part from all sources together. */
    Quantity held(Account account, String part) {
        return sources(account, part).values().stream().reduce(Quantity.ZERO, Quantity::plus);
    }

    /** Everything in an account that is not zero, by part, then in order of arrival. */
    List<Holding> holdings(Account account) {
        List<Holding> holdings = new ArrayList<>();
        balances.getOrDefault(account, Map.of())
                .forEach(
                        (part, sources) ->
                                sources.forEach((s, q) -> holdings.add(new Holding(part, s, q))));
        return holdings;
    }

    private Map<Source, Quantity> sources(Account account, String part) {
        return balances.getOrDefault(account, Map.of()).getOrDefault(part, Map.of());
    }
}
