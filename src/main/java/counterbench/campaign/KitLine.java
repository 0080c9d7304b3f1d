package counterbench.campaign;

import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * One line of a kit's contents.
 *
 * @param part the part number
 * @param name what people call it
 * @param unit what it is counted or measured in
 * @param quantity how much the kit holds and, where the condition holds, a job requires
 * @param atLeast for a measured part, the least that must be fitted; the quantity itself if not
 *     said
 * @param singleUse new each time
 * @param matched belongs to the other matched parts of the same kit
 * @param shelfLife has a last usable day
 * @param onCore goes on the core (a plug), not on the vehicle
 * @param replaces older part numbers that count as this one against what is required
 * @param value what one put back into the store is worth, in the site's currency
 * @param when for which vehicles the job requires it
 */
public record KitLine(
        String part,
        String name,
        PartUnit unit,
        Quantity quantity,
        Quantity atLeast,
        boolean singleUse,
        boolean matched,
        boolean shelfLife,
        boolean onCore,
        List<String> replaces,
        BigDecimal value,
        Condition when) {
    public KitLine {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(atLeast, "atLeast");
        replaces = List.copyOf(replaces);
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(when, "when");
    }
}
