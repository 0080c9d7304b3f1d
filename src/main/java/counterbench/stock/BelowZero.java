package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * The first time that an account held less than nothing of a part, all sources together.
 *
 * @param at the instant after all of whose moves it did
 * @param fact the last fact of that instant that took from it
 * @param balance what it held then, below zero
 */
public record BelowZero(Account account, String part, Instant at, Address fact, Quantity balance) {
    public BelowZero {
        Objects.requireNonNull(account, "account");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(fact, "fact");
        if (!balance.isNegative()) {
            throw new IllegalArgumentException(account + " " + part + " holds " + balance);
        }
    }

    /** The first time for each such account and part, by account, then part. */
    public static List<BelowZero> in(List<Move> moves, Predicate<Account> accounts) {
        Scan scan = new Scan(accounts);
        moves.stream().sorted(Comparator.comparing(Move::at)).forEach(scan::take);
        scan.endInstant();
        return scan.found.values().stream()
                .sorted(Comparator.comparing(BelowZero::account).thenComparing(BelowZero::part))
                .toList();
    }

    private record Key(Account account, String part) {}

    /** Goes through moves in order of time and looks at the balances between instants. */
    private static final class Scan {
        private final Predicate<Account> accounts;
        private final Map<Key, Quantity> balances = new LinkedHashMap<>();
        private final Map<Key, Move> takenNow = new LinkedHashMap<>();
        private final Map<Key, BelowZero> found = new LinkedHashMap<>();
        private Instant now = Instant.MIN;

        Scan(Predicate<Account> accounts) {
            this.accounts = accounts;
        }

        void take(Move move) {
            if (!move.at().equals(now)) {
                endInstant();
                now = move.at();
            }
            if (accounts.test(move.to())) {
                add(new Key(move.to(), move.part()), move.quantity());
            }
            if (accounts.test(move.from())) {
                Key key = new Key(move.from(), move.part());
                add(key, move.quantity().negate());
                takenNow.put(key, move);
            }
        }

        private void add(Key key, Quantity quantity) {
            balances.merge(key, quantity, Quantity::plus);
        }

        void endInstant() {
            for (Map.Entry<Key, Move> taken : new ArrayList<>(takenNow.entrySet())) {
                Key key = taken.getKey();
                Quantity balance = balances.getOrDefault(key, Quantity.ZERO);
                if (balance.isNegative()) {
                    Move by = taken.getValue();
                    found.putIfAbsent(
                            key, new BelowZero(key.account, key.part, by.at(), by.fact(), balance));
                }
            }
            takenNow.clear();
        }
    }
}
