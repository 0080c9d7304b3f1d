package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What was found on the shelf: so much of a loose part, or a kit that was there (1) or not (0).
 *
 * @param by who did it, if the row says so
 */
public record Count(
        Address address,
        Instant countedAt,
        Quantity quantity,
        @Nullable String part,
        @Nullable String kit,
        @Nullable String by) {
    public Count {
        Objects.requireNonNull(countedAt, "countedAt");
        Objects.requireNonNull(quantity, "quantity");
        if ((kit == null) == (part == null)) {
            throw new IllegalArgumentException("a count names either a kit or a part");
        }
    }

    /** One of which nobody says who did it. */
    public Count(
            Address address,
            Instant countedAt,
            Quantity quantity,
            @Nullable String part,
            @Nullable String kit) {
        this(address, countedAt, quantity, part, kit, null);
    }
}
