package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A count that differs from the book at its time.
 *
 * @param account the store, or the kit
 * @param part the loose part; null for a kit, which is counted whole
 * @param fact the count
 * @param counted what was there; for a kit 1 or 0
 * @param book what should have been there
 */
public record CountDifference(
        Account account,
        @Nullable String part,
        Instant at,
        Address fact,
        Quantity counted,
        Quantity book) {
    public CountDifference {
        Objects.requireNonNull(account, "account");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(fact, "fact");
        Objects.requireNonNull(counted, "counted");
        Objects.requireNonNull(book, "book");
    }

    /** How much more was there than should have been; below zero if less. */
    public Quantity difference() {
        return counted.minus(book);
    }
}
