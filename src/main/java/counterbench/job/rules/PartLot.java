package counterbench.job.rules;

import java.util.Objects;

/** A lot of a loose part, as receipts name it. */
public record PartLot(String part, String lot) {
    public PartLot {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(lot, "lot");
    }
}
