package counterbench.job.rules;

import counterbench.stock.Use;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The kits that a job's rows name, by the part of the row; no text for the issue of a kit. */
final class KitRows {
    /** Stands for the row that issues a whole kit. */
    static final String WHOLE_KIT = "";

    private final SortedMap<String, SortedSet<String>> kits = new TreeMap<>();

    private KitRows() {}

    /** Those of all rows. */
    static KitRows all(HardwareFacts facts) {
        KitRows rows = uses(facts);
        facts.goods().issues().stream()
                .flatMap(issue -> Stream.ofNullable(issue.kit()))
                .forEach(kit -> rows.add(WHOLE_KIT, kit));
        return rows;
    }

    /** Those of the uses, whatever their condition. */
    static KitRows uses(HardwareFacts facts) {
        KitRows rows = new KitRows();
        for (Use use : facts.goods().uses()) {
            if (use.kit() != null) {
                rows.add(use.part(), use.kit());
            }
        }
        return rows;
    }

    /** The kits that are as described, by part. */
    Map<String, SortedSet<String>> where(Predicate<String> described) {
        SortedMap<String, SortedSet<String>> found = new TreeMap<>();
        kits.forEach(
                (part, named) -> {
                    SortedSet<String> some = new TreeSet<>(named);
                    some.removeIf(described.negate());
                    if (!some.isEmpty()) {
                        found.put(part, some);
                    }
                });
        return found;
    }

    private void add(String part, String kit) {
        kits.computeIfAbsent(part, p -> new TreeSet<>()).add(kit);
    }
}
