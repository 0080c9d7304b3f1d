package counterbench.acts;

import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Move;
import counterbench.stock.Source;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * So much of a part from one source in an account; below zero if the account owes it.
 *
 * @param source where it came from, which tells expiry and cost
 */
public record Holding(String part, Source source, Quantity quantity) {
    public Holding {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(quantity, "quantity");
    }

    private record Key(String part, Source source) {}

    /** Everything in an account after all moves, in order of arrival, without the zeros. */
    public static List<Holding> in(Account account, Collection<Move> moves) {
        Map<Key, Quantity> held = new LinkedHashMap<>();
        for (Move move : moves) {
            Key key = new Key(move.part(), move.source());
            if (move.to().equals(account)) {
                held.merge(key, move.quantity(), Quantity::plus);
            }
            if (move.from().equals(account)) {
                held.merge(key, move.quantity().negate(), Quantity::plus);
            }
        }
        List<Holding> holdings = new ArrayList<>();
        held.forEach(
                (key, quantity) -> {
                    if (!quantity.isZero()) {
                        holdings.add(new Holding(key.part, key.source, quantity));
                    }
                });
        return holdings;
    }

    /**
     * How much could be taken out of an account at a time without its going below zero then or
     * later: the least that it holds from that time on.
     *
     * @param moves in order of time
     * @param which the moves that matter, such as those of one part
     */
    public static Quantity free(
            Account account, Collection<Move> moves, Instant from, Predicate<Move> which) {
        Quantity held = Quantity.ZERO;
        Quantity least = null;
        Instant last = Instant.MIN;
        for (Move move : moves) {
            if (!which.test(move) || !move.touches(account)) {
                continue;
            }
            if (move.at().isAfter(from) && !move.at().equals(last)) {
                least = least == null ? held : least.min(held);
            }
            last = move.at();
            held = move.to().equals(account) ? held.plus(move.quantity()) : held;
            held = move.from().equals(account) ? held.minus(move.quantity()) : held;
        }
        return least == null ? held : least.min(held);
    }
}
