package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A kit, or so much of a loose part, handed to a job. */
public record Issue(
        Address address,
        String job,
        Instant at,
        @Nullable String kit,
        @Nullable String part,
        @Nullable Quantity quantity,
        @Nullable String lot) {
    public Issue {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(at, "at");
        if ((kit == null) == (part == null)) {
            throw new IllegalArgumentException("an issue names either a kit or a part");
        }
    }
}
