package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A kit, or so much of a loose part, handed to a job.
 *
 * @param by who did it, if the row says so
 */
public record Issue(
        Address address,
        String job,
        Instant at,
        @Nullable String kit,
        @Nullable String part,
        @Nullable Quantity quantity,
        @Nullable String lot,
        @Nullable String by) {
    public Issue {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(at, "at");
        if ((kit == null) == (part == null)) {
            throw new IllegalArgumentException("an issue names either a kit or a part");
        }
    }

    /** One of which nobody says who did it. */
    public Issue(
            Address address,
            String job,
            Instant at,
            @Nullable String kit,
            @Nullable String part,
            @Nullable Quantity quantity,
            @Nullable String lot) {
        this(address, job, at, kit, part, quantity, lot, null);
    }
}
