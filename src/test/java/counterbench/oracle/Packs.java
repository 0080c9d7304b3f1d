package counterbench.oracle;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** All revisions of all campaigns, by the day on which each came into force. */
final class Packs {

    private final Map<String, List<Pack>> byCampaign = new TreeMap<>();

    Packs(List<Pack> packs) {
        packs.forEach(p -> byCampaign.computeIfAbsent(p.campaign(), c -> new ArrayList<>()).add(p));
        byCampaign.values().forEach(l -> l.sort(Comparator.comparing(Pack::inForceFrom)));
    }

    /** The revision in force on a day; the first one where the day is before all of them. */
    Pack inForce(String campaign, LocalDate day) {
        List<Pack> revisions = byCampaign.get(campaign);
        Pack found = revisions.get(0);
        for (Pack pack : revisions) {
            if (!pack.inForceFrom().isAfter(day)) {
                found = pack;
            }
        }
        return found;
    }

    /** What a kit should contain by the revision it was packed under, else the one in force. */
    Map<String, BigDecimal> contents(String kitPart, String revision, LocalDate received) {
        for (String campaign : byCampaign.keySet()) {
            Optional<Pack> pack =
                    revision.isEmpty()
                            ? Optional.of(inForce(campaign, received))
                            : byCampaign.get(campaign).stream()
                                    .filter(p -> p.revision().equals(revision))
                                    .findFirst();
            Map<String, BigDecimal> contents = pack.map(p -> contents(p, kitPart)).orElse(Map.of());
            if (!contents.isEmpty()) {
                return contents;
            }
        }
        return Map.of();
    }

    /** Every part that any revision of the campaign puts into a kit. */
    Set<String> parts(String campaign) {
        Set<String> parts = new LinkedHashSet<>();
        byCampaign.get(campaign).forEach(p -> parts.addAll(p.parts()));
        return parts;
    }

    boolean measured(String part) {
        return byCampaign.values().stream()
                .flatMap(List::stream)
                .flatMap(p -> p.kits().stream())
                .flatMap(k -> k.contents().stream())
                .anyMatch(c -> c.part().equals(part) && c.quantity().measured());
    }

    private static Map<String, BigDecimal> contents(Pack pack, String kitPart) {
        Map<String, BigDecimal> contents = new LinkedHashMap<>();
        pack.kits().stream()
                .filter(k -> k.part().equals(kitPart))
                .findFirst()
                .ifPresent(
                        k ->
                                k.contents()
                                        .forEach(
                                                c ->
                                                        contents.merge(
                                                                c.part(),
                                                                c.quantity().number(),
                                                                BigDecimal::add)));
        return contents;
    }
}
