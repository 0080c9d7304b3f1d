package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.cores.Whereabouts;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A shipment leaves from one yard. */
final class OneYard {
    private OneYard() {}

    /**
     * Refuses cores of one shipment that are not in one place.
     *
     * @param site whose cores they are
     * @param at when it matters
     */
    static void mustHold(String shipment, Collection<CoreCase> cores, Site site, Instant at) {
        Map<String, List<String>> places = new TreeMap<>();
        for (CoreCase core : cores) {
            Whereabouts where = Whereabouts.at(at, core.core(), site.site());
            String place = (where.isOnTheWay() ? "on the way to " : "at ") + where.site();
            List<String> tags = places.computeIfAbsent(place, p -> new ArrayList<>());
            if (!tags.contains(core.core().core())) {
                tags.add(core.core().core());
            }
        }
        if (places.size() > 1) {
            throw new Refused(
                    "shipment \"" + shipment + "\"",
                    "its cores lie in different yards: "
                            + places.entrySet().stream()
                                    .map(e -> String.join(", ", e.getValue()) + " " + e.getKey())
                                    .collect(Collectors.joining("; ")),
                    "a shipment leaves from one yard: keep those of the other off it (shipment"
                            + " take-off), or have them sent there first (core send)");
        }
    }
}
