package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What was found on the shelf: so much of a loose part, or a kit that was there (1) or not (0). */
public record Count(
        Address address,
        Instant countedAt,
        Quantity quantity,
        @Nullable String part,
        @Nullable String kit) {
    public Count {
        Objects.requireNonNull(countedAt, "countedAt");
        Objects.requireNonNull(quantity, "quantity");
        if ((kit == null) == (part == null)) {
            throw new IllegalArgumentException("a count names either a kit or a part");
        }
    }
}
