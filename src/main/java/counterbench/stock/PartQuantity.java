package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.Objects;

/** So much of one part. */
public record PartQuantity(String part, Quantity quantity) {
    public PartQuantity {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(quantity, "quantity");
    }
}
