package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which kits stand on the shelf while the facts are gone through, and what those that left it held
 * when they left.
 */
final class KitShelf {
    private final Book book;
    private final Set<String> standing = new HashSet<>();
    private final Map<String, SortedMap<String, Quantity>> whole = new HashMap<>();

    KitShelf(Book book) {
        this.book = book;
    }

    /** A kit came with these contents. */
    void came(String kit, SortedMap<String, Quantity> contents) {
        standing.add(kit);
        whole.put(kit, contents);
    }

    /** Something was put back into a kit, or it was found. */
    void stands(String kit) {
        standing.add(kit);
    }

    /** A kit leaves with all that it still holds; called before the goods are moved. */
    void leaves(String kit) {
        standing.remove(kit);
        SortedMap<String, Quantity> held = heldBy(kit);
        if (!held.isEmpty()) {
            whole.put(kit, held);
        }
    }

    /**
     * Whether a kit should be found on the shelf: it came and did not leave whole, and some of what
     * it came with is still in it. One whose contents nobody knows only needs to have stayed.
     */
    boolean shouldStand(String kit) {
        boolean unknownContents = whole.getOrDefault(kit, new TreeMap<>()).isEmpty();
        return standing.contains(kit) && (unknownContents || !heldBy(kit).isEmpty());
    }

    /** What a kit held when it last left the shelf whole, else what it came with. */
    SortedMap<String, Quantity> whole(String kit) {
        return whole.getOrDefault(kit, new TreeMap<>());
    }

    private SortedMap<String, Quantity> heldBy(String kit) {
        SortedMap<String, Quantity> held = new TreeMap<>();
        List<Book.Holding> holdings = book.holdings(Account.kit(kit));
        holdings.forEach(h -> held.merge(h.part(), h.quantity(), Quantity::plus));
        held.values().removeIf(q -> !q.isPositive());
        return held;
    }
}
