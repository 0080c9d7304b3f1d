package counterbench.review.store;

import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.KIT_LINK;

import counterbench.db.generated.tables.records.KitsFactRecord;
import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import counterbench.review.Component;
import counterbench.stock.Kit;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Kits that no job names: those on the shelf, and those that only stock events or counts name. */
final class LooseKits {
    private final SiteFacts siteFacts;
    private final JobFiles files;
    private final Visible visible;
    private final FactReader reader;

    LooseKits(SiteFacts siteFacts, JobFiles files, Visible visible, FactReader reader) {
        this.siteFacts = siteFacts;
        this.files = files;
        this.visible = visible;
        this.reader = reader;
    }

    /** Gives each such kit as a component of its own. */
    void each(DSLContext sql, int siteNo, Consumer<Component> components) {
        Set<String> named = new HashSet<>();
        eachReceived(sql, siteNo, DSL.noCondition(), named, components);
        onlyNamedByEvents(sql, siteNo, siteFacts.kitsWithEvents(), named, components);
    }

    private void eachReceived(
            DSLContext sql,
            int siteNo,
            Condition which,
            Set<String> named,
            Consumer<Component> components) {
        Condition linked =
                DSL.exists(
                        DSL.selectOne()
                                .from(KIT_LINK)
                                .where(
                                        KIT_LINK.SITE_NO.eq(KITS_FACT.SITE_NO),
                                        KIT_LINK.KIT.eq(KITS_FACT.KIT)));
        KeyRuns.each(
                sql.selectFrom(KITS_FACT)
                        .where(KITS_FACT.SITE_NO.eq((short) siteNo).and(which).and(DSL.not(linked)))
                        .orderBy(KITS_FACT.KIT),
                r -> r.getKit(),
                rows -> named.add(give(rows, components)));
    }

    /** Gives those of some kits. */
    void of(
            DSLContext sql,
            int siteNo,
            Collection<String> serials,
            Consumer<Component> components) {
        Set<String> named = new HashSet<>();
        serials.forEach(kit -> eachReceived(sql, siteNo, KITS_FACT.KIT.eq(kit), named, components));
        onlyNamedByEvents(
                sql,
                siteNo,
                siteFacts.kitsWithEvents().stream().filter(serials::contains).toList(),
                named,
                components);
    }

    private String give(List<KitsFactRecord> rows, Consumer<Component> components) {
        String serial = rows.get(0).getKit();
        @Nullable Kit kit =
                Keyed.merge(FactTable.of(FactKind.KITS), rows, visible).stream()
                        .flatMap(k -> reader.kit(k.address(), k.row()).stream())
                        .findFirst()
                        .orElse(null);
        components.accept(files.alone(serial, kit));
        return serial;
    }

    private void onlyNamedByEvents(
            DSLContext sql,
            int siteNo,
            List<String> serials,
            Set<String> done,
            Consumer<Component> components) {
        for (String serial : serials) {
            boolean ofJob =
                    sql.fetchExists(
                            KIT_LINK,
                            KIT_LINK.SITE_NO.eq((short) siteNo).and(KIT_LINK.KIT.eq(serial)));
            if (!ofJob && !done.contains(serial)) {
                components.accept(files.alone(serial, null));
            }
        }
    }
}
