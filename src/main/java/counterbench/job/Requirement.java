package counterbench.job;

import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What a pack says about one part for one vehicle: all its lines for the part together.
 *
 * @param part the part number of the pack's line
 * @param name what people call it
 * @param unit what it is counted or measured in
 * @param onVehicle whether a line puts it on the vehicle; else it goes on the core
 * @param required how much must be on the vehicle, by the lines whose condition holds
 * @param atLeast for a measured part, the least that will do
 * @param singleUse new each time
 * @param matched belongs to other parts of its kit
 * @param shelfLife has a last usable day
 * @param replaces older part numbers that count as this part, sorted
 * @param lacking attributes for want of which it cannot be told whether a line applies, sorted
 */
public record Requirement(
        String part,
        String name,
        PartUnit unit,
        boolean onVehicle,
        Quantity required,
        Quantity atLeast,
        boolean singleUse,
        boolean matched,
        boolean shelfLife,
        List<String> replaces,
        SortedSet<String> lacking) {
    public Requirement {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(atLeast, "atLeast");
        replaces = List.copyOf(replaces);
        lacking = Collections.unmodifiableSortedSet(new TreeSet<>(lacking));
    }

    /** Whether it cannot be told how much is required. */
    public boolean isConditionUnknown() {
        return !lacking.isEmpty();
    }

    /** Whether the vehicle needs it, as far as can be told. */
    public boolean applies() {
        return required.isPositive() && !isConditionUnknown();
    }

    /** The least that must be on the vehicle. */
    public Quantity least() {
        return unit.isMeasured() ? atLeast : required;
    }

    /** Its name and number, as messages say it. */
    public String named() {
        return name.equals(part) ? part : name + " " + part;
    }
}
