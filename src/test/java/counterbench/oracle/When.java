package counterbench.oracle;

import java.util.List;
import java.util.Map;

/** A condition of the pack: each attribute asked for, with the answers that satisfy it. */
record When(Map<String, List<String>> asked) {

    /**
     * Whether a line applies to a vehicle; UNKNOWN where the vehicle lacks an attribute asked for.
     */
    enum Applies {
        YES,
        NO,
        UNKNOWN;

        /** The line inside a kit: a kit that does not apply settles it. */
        Applies and(Applies inner) {
            return this == YES ? inner : this;
        }
    }

    Applies holds(Map<String, String> vehicle) {
        if (!vehicle.keySet().containsAll(asked.keySet())) {
            return Applies.UNKNOWN;
        }
        boolean all =
                asked.entrySet().stream()
                        .allMatch(a -> a.getValue().contains(vehicle.get(a.getKey())));
        return all ? Applies.YES : Applies.NO;
    }
}
