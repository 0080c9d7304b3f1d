package counterbench.month.sheet;

import counterbench.campaign.KitLine;
import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What parts are called and counted in. What a pack says goes before what a sheet says. */
public final class PartNames {
    private final Map<String, String> names;
    private final Map<String, PartUnit> units;

    /**
     * @param listed names by part, as the site's list of parts has them
     * @param units units by part
     */
    public PartNames(Packs packs, Map<String, String> listed, Map<String, PartUnit> units) {
        this.names = new HashMap<>(listed);
        this.units = Map.copyOf(units);
        packs.all().stream()
                .flatMap(pack -> pack.kits().stream())
                .flatMap(kit -> kit.contents().stream())
                .forEach(this::add);
    }

    private void add(KitLine line) {
        names.put(line.part(), line.name());
        line.replaces().forEach(old -> names.putIfAbsent(old, line.name()));
    }

    /** The name of a part; null where nobody says. */
    public @Nullable String name(String part) {
        return names.get(part);
    }

    /** The unit of a part; each where nobody says. */
    public String unit(String part) {
        return units.getOrDefault(part, PartUnit.EACH).word();
    }
}
