package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The writer's own book of loose parts, so that most counts come out right. */
final class StoreShelf {

    private record Change(Instant at, String part, BigDecimal quantity) {}

    private final Map<String, BigDecimal> settled = new TreeMap<>();
    private final List<Change> open = new ArrayList<>();

    void change(Instant at, String part, BigDecimal quantity) {
        open.add(new Change(at, part, quantity));
    }

    /** What lies there at the end of an instant, after which nothing earlier may be changed. */
    Map<String, BigDecimal> settle(Instant at) {
        for (Change change : open) {
            if (!change.at().isAfter(at)) {
                settled.merge(change.part(), change.quantity(), BigDecimal::add);
            }
        }
        open.removeIf(c -> !c.at().isAfter(at));
        return new TreeMap<>(settled);
    }

    void counted(String part, BigDecimal quantity) {
        settled.put(part, quantity);
    }
}
