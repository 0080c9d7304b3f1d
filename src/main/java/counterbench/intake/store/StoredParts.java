package counterbench.intake.store;

import static counterbench.db.generated.Tables.PARTS_FACT;

import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.ListedPart;
import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.campaign.PartUnits;
import counterbench.db.generated.tables.records.PartsFactRecord;
import counterbench.journal.store.AllPosted;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;

/** Parts that packs and lists name, and those that the import has brought so far. */
final class StoredParts {
    private final Set<String> parts = new HashSet<>();
    private final PartUnits units;

    /** Every list of parts names parts; the site's own says what it counts or measures them in. */
    StoredParts(DSLContext sql, Site site, AllPosted posted, Packs packs) {
        packs.all().forEach(this::addParts);
        units = new PartUnits(packs, Map.of());
        for (ListedPart listed : listed(sql, posted)) {
            parts.add(listed.part());
            if (listed.site().equals(site.site())) {
                units.list(listed.part(), listed.unit());
            }
        }
    }

    /** What the lists of all sites state. */
    static List<ListedPart> listed(DSLContext sql, AllPosted posted) {
        Map<Integer, String> sites = new HashMap<>();
        JooqSites.all(sql).forEach(site -> sites.put(site.no(), site.site()));
        List<ListedPart> listed = new ArrayList<>();
        for (PartsFactRecord row : sql.fetch(PARTS_FACT)) {
            String site = sites.get((int) row.getSiteNo());
            if (site != null && posted.counts(row.getSiteNo(), row.getBatch(), row.getLine())) {
                PartUnit.of(row.getUnit())
                        .map(unit -> new ListedPart(site, row.getPart(), unit))
                        .ifPresent(listed::add);
            }
        }
        return listed;
    }

    private void addParts(Pack pack) {
        pack.cores().stream().map(CoreTerms::part).forEach(parts::add);
        for (KitTerms kit : pack.kits()) {
            parts.add(kit.part());
            for (KitLine line : kit.contents()) {
                parts.add(line.part());
                parts.addAll(line.replaces());
            }
        }
    }

    void bring(String part, String unit) {
        parts.add(part);
        PartUnit.of(unit).ifPresent(known -> units.list(part, known));
    }

    boolean isPart(String part) {
        return parts.contains(part);
    }

    boolean isCounted(String part) {
        return units.of(part).filter(PartUnit::isMeasured).isEmpty();
    }

    Optional<PartUnit> packedUnit(String part) {
        return units.packed(part);
    }
}
