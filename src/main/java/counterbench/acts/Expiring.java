package counterbench.acts;

import counterbench.shared.Quantity;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A kit or a lot on the shelf with its last usable day.
 *
 * @param kit the kit's serial; null for loose parts
 * @param part the kit's part, or the loose part
 * @param quantity one kit, or how much of the part
 */
public record Expiring(
        LocalDate until,
        @Nullable String kit,
        String part,
        @Nullable String lot,
        Quantity quantity) {
    /** The soonest first, so that what is expired stands before all. */
    public static final Comparator<Expiring> SOONEST_FIRST =
            Comparator.comparing(Expiring::until)
                    .thenComparing(Expiring::part)
                    .thenComparing(e -> Objects.toString(e.kit, ""))
                    .thenComparing(e -> Objects.toString(e.lot, ""));

    public Expiring {
        Objects.requireNonNull(until, "until");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(quantity, "quantity");
    }

    /** Days until the last usable day; below zero once it is past. */
    public long daysLeft(LocalDate today) {
        return ChronoUnit.DAYS.between(today, until);
    }
}
