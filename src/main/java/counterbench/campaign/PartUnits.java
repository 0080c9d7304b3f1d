package counterbench.campaign;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What parts are counted or measured in: as a pack says, or else a list of parts, or else the pack
 * that names the part as an older number of one of its own.
 */
public final class PartUnits {
    private final Map<String, PartUnit> packed = new HashMap<>();
    private final Map<String, PartUnit> listed;
    private final Map<String, PartUnit> older = new HashMap<>();

    /**
     * @param listed units by part that lists of parts state
     */
    public PartUnits(Packs packs, Map<String, PartUnit> listed) {
        this.listed = new HashMap<>(listed);
        packs.all().stream()
                .flatMap(p -> p.kits().stream())
                .flatMap(k -> k.contents().stream())
                .forEach(this::take);
    }

    private void take(KitLine line) {
        packed.put(line.part(), line.unit());
        line.replaces().forEach(old -> older.putIfAbsent(old, line.unit()));
    }

    /** Takes what a list of parts states of one more part. */
    public void list(String part, PartUnit unit) {
        listed.put(part, unit);
    }

    /** The unit of a part; empty where neither a kit's contents nor a list names it. */
    public Optional<PartUnit> of(String part) {
        return packed(part)
                .or(() -> Optional.ofNullable(listed.get(part)))
                .or(() -> Optional.ofNullable(older.get(part)));
    }

    /** The unit in which packs have a part; empty where no kit's contents name it. */
    public Optional<PartUnit> packed(String part) {
        return Optional.ofNullable(packed.get(part));
    }

    /** The units of all parts that have one. */
    public Map<String, PartUnit> all() {
        Map<String, PartUnit> all = new HashMap<>(older);
        all.putAll(listed);
        all.putAll(packed);
        return Map.copyOf(all);
    }
}
