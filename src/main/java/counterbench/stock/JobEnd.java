package counterbench.stock;

import counterbench.shared.Address;
import java.time.Instant;
import java.util.Objects;
import java.util.Set;

/**
 * A job that was completed: the moment at which the rest of what is measured on its bench is
 * scrapped.
 *
 * @param address the fact that completed it
 * @param measured the parts that are measured (mL, g), not counted
 */
public record JobEnd(Address address, String job, Instant at, Set<String> measured) {
    public JobEnd {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(at, "at");
        measured = Set.copyOf(measured);
    }
}
