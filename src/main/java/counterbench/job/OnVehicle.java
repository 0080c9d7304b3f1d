package counterbench.job;

import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * What a job has put on its vehicle: fitted new and refitted old, each less what was taken off
 * again. Old numbers are counted under the pack's part that they count as.
 */
public final class OnVehicle {
    private final Map<String, Quantity> fresh = new TreeMap<>();
    private final Map<String, Quantity> old = new TreeMap<>();

    private OnVehicle() {}

    /**
     * What is on the vehicle at a time.
     *
     * @param uses the job's uses, in any order
     * @param until the last instant that counts: that of the completion
     * @param packPart the part that a part number counts as
     */
    public static OnVehicle at(
            Instant until, Collection<Use> uses, UnaryOperator<String> packPart) {
        OnVehicle found = new OnVehicle();
        for (Use use : uses) {
            if (!use.at().isAfter(until)) {
                found.add(packPart.apply(use.part()), use);
            }
        }
        return found;
    }

    /** Every part fitted, refitted or taken off, sorted. */
    public SortedSet<String> parts() {
        SortedSet<String> parts = new TreeSet<>(fresh.keySet());
        parts.addAll(old.keySet());
        return Collections.unmodifiableSortedSet(parts);
    }

    /** How much of a part was fitted new and is still there. */
    public Quantity fittedNew(String part) {
        return fresh.getOrDefault(part, Quantity.ZERO);
    }

    /** How much of a part was refitted old and is still there. */
    public Quantity refittedOld(String part) {
        return old.getOrDefault(part, Quantity.ZERO);
    }

    /** How much of a part is there, new and old. */
    public Quantity total(String part) {
        return fittedNew(part).plus(refittedOld(part));
    }

    private void add(String part, Use use) {
        switch (use.condition()) {
            case NEW -> fresh.merge(part, use.quantity(), Quantity::plus);
            case REUSED -> old.merge(part, use.quantity(), Quantity::plus);
            case TAKEN_OFF -> takeOff(part, use);
            case SCRAPPED, PUT_BACK, ON_CORE -> {
                // none of these was on the vehicle
            }
        }
    }

    private void takeOff(String part, Use use) {
        Quantity off = use.quantity().negate();
        if (use.was() == Use.Condition.NEW) {
            fresh.merge(part, off, Quantity::plus);
        } else if (use.was() == Use.Condition.REUSED) {
            old.merge(part, off, Quantity::plus);
        }
    }
}
