package counterbench.acts.store;

import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.KeyedMerge;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;

/** Rows that count, those of one key put together. */
final class KeyedRows {
    private KeyedRows() {}

    /**
     * A row and the site that it belongs to.
     *
     * @param siteNo the site's number in keys
     */
    record AtSite(int siteNo, FactRow row) {}

    /** In the order of their first rows. */
    static List<AtSite> read(DSLContext sql, AllPosted posted, FactKind kind, Condition which) {
        FactTable table = FactTable.of(kind);
        Map<String, List<AtSite>> byKey = new LinkedHashMap<>();
        for (Record record :
                sql.selectFrom(table.table())
                        .where(which)
                        .orderBy(table.batch(), table.line())
                        .fetch()) {
            int siteNo = table.siteNo(record);
            if (posted.counts(siteNo, table.batch(record), table.line(record))) {
                FactRow row = table.row(record);
                String key =
                        (kind.belongsToStore() ? "" : siteNo + " ")
                                + (kind.hasKey() ? Canonical.key(row) : byKey.size());
                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(new AtSite(siteNo, row));
            }
        }
        return byKey.values().stream()
                .map(
                        rows ->
                                new AtSite(
                                        rows.get(0).siteNo(),
                                        KeyedMerge.together(rows.stream().map(AtSite::row).toList())
                                                .orElseThrow()))
                .toList();
    }
}
