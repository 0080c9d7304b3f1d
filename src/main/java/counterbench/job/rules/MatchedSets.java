package counterbench.job.rules;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.job.Requirement;
import counterbench.job.Requirements;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The parts that belong together on one vehicle: the matched parts of one kit that the vehicle
 * needs. Kits that share such a part are variants of one set.
 */
final class MatchedSets {
    private MatchedSets() {}

    static List<NavigableSet<String>> of(Requirements requirements) {
        List<NavigableSet<String>> sets = new ArrayList<>();
        for (KitTerms kit : requirements.pack().kits()) {
            add(sets, matched(kit, requirements));
        }
        return sets;
    }

    private static NavigableSet<String> matched(KitTerms kit, Requirements requirements) {
        NavigableSet<String> parts = new TreeSet<>();
        kit.contents().stream()
                .filter(KitLine::matched)
                .flatMap(line -> requirements.of(line.part()).stream())
                .filter(Requirement::applies)
                .forEach(required -> parts.add(required.part()));
        return parts;
    }

    private static void add(List<NavigableSet<String>> sets, NavigableSet<String> parts) {
        for (NavigableSet<String> other : List.copyOf(sets)) {
            if (other.stream().anyMatch(parts::contains)) {
                parts.addAll(other);
                sets.remove(other);
            }
        }
        if (!parts.isEmpty()) {
            sets.add(parts);
        }
    }
}
