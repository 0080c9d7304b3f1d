package counterbench.campaign;

import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is due back for a job.
 *
 * @param part the part number of the removed unit
 * @param quantity how many a job returns
 * @param when for which vehicles
 * @param drainMinutes the least length of the drain period
 * @param plugs how many plugs a drained core needs
 * @param packaging how it must be packed, if the terms say
 * @param returnWithinDays days after completion by whose end it must be shipped
 * @param charge owed until the core is accepted, in the site's currency
 */
public record CoreTerms(
        String part,
        int quantity,
        Condition when,
        BigDecimal drainMinutes,
        int plugs,
        @Nullable String packaging,
        @Nullable Integer returnWithinDays,
        BigDecimal charge) {
    public CoreTerms {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(when, "when");
        Objects.requireNonNull(drainMinutes, "drainMinutes");
        Objects.requireNonNull(charge, "charge");
    }
}
