package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Loose parts received into the store.
 *
 * @param by who did it, if the row says so
 */
public record Receipt(
        Address address,
        String part,
        Quantity quantity,
        Instant receivedAt,
        @Nullable String lot,
        @Nullable LocalDate expiresOn,
        @Nullable BigDecimal unitCost,
        @Nullable String by) {
    public Receipt {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(receivedAt, "receivedAt");
    }

    /** One of which nobody says who did it. */
    public Receipt(
            Address address,
            String part,
            Quantity quantity,
            Instant receivedAt,
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            @Nullable BigDecimal unitCost) {
        this(address, part, quantity, receivedAt, lot, expiresOn, unitCost, null);
    }
}
