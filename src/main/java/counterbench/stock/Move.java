package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;

/**
 * So much of a part going from one account to another, because of one fact.
 *
 * @param at when
 * @param fact the fact that says so, or from which it follows
 * @param quantity always above zero
 */
public record Move(
        Instant at,
        Address fact,
        Account from,
        Account to,
        String part,
        Source source,
        Quantity quantity) {
    public Move {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(fact, "fact");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(source, "source");
        if (!quantity.isPositive()) {
            throw new IllegalArgumentException("a move of " + quantity + " of " + part);
        }
    }

    /** Whether it takes from or puts into that account. */
    public boolean touches(Account account) {
        return from.equals(account) || to.equals(account);
    }
}
