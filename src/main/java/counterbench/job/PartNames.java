package counterbench.job;

import counterbench.campaign.Condition.Holds;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which part of the pack a part number counts as. A number that a line replaces counts as that
 * line's part; where several lines replace it, as that of the first that applies to the vehicle,
 * else the first that may apply, else the first.
 */
final class PartNames {
    private final Map<String, String> replacedBy = new HashMap<>();

    PartNames(List<PackLine> lines) {
        Stream.of(Holds.YES, Holds.UNKNOWN, Holds.NO)
                .flatMap(holds -> lines.stream().filter(line -> line.holds() == holds))
                .forEach(this::add);
    }

    /** The pack's part that a number counts as; the number itself if no line replaces it. */
    String packPart(String part) {
        String found = part;
        Set<String> seen = new HashSet<>();
        // A newer part may itself have been replaced; packs that replace in a circle stop here.
        while (replacedBy.containsKey(found) && seen.add(found)) {
            found = replacedBy.getOrDefault(found, found);
        }
        return found;
    }

    private void add(PackLine line) {
        String part = line.line().part();
        line.line().replaces().stream()
                .filter(older -> !older.equals(part))
                .forEach(older -> replacedBy.putIfAbsent(older, part));
    }
}
