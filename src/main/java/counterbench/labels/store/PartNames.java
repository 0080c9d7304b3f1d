package counterbench.labels.store;

import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** What people call parts. */
final class PartNames {
    private final Map<String, String> names = new TreeMap<>();

    private PartNames() {}

    /** Part numbers with their names; empty text for a part without one. */
    static Map<String, String> of(Packs packs, PostedRows rows) {
        PartNames all = new PartNames();
        packs.all().forEach(all::add);
        rows.texts(FactKind.RECEIPTS, "part").forEach(part -> all.names.putIfAbsent(part, ""));
        rows.all(FactKind.PARTS_LIST).forEach(all::add);
        return all.names;
    }

    private void add(FactRow listed) {
        names.put(
                Objects.requireNonNull(listed.text("part")),
                Objects.requireNonNull(listed.text("name")));
    }

    private void add(Pack pack) {
        pack.kits().forEach(kit -> add(pack, kit));
        pack.cores().stream().map(CoreTerms::part).forEach(part -> names.putIfAbsent(part, ""));
    }

    private void add(Pack pack, KitTerms kit) {
        names.putIfAbsent(kit.part(), "kit of campaign " + pack.campaign());
        kit.contents()
                .forEach(
                        line -> {
                            names.put(line.part(), line.name());
                            line.replaces().forEach(p -> names.putIfAbsent(p, line.name()));
                        });
    }
}
