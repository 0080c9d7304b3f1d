package counterbench.care.store;

import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;

/** The rows of a site that count, read one at a time with only the fields that are asked for. */
record CountingRows(DSLContext sql, Site site, Counting counting) {
    /** Which facts count. */
    @FunctionalInterface
    interface Counting {
        boolean counts(int siteNo, long batch, int line);
    }

    void each(FactKind kind, Consumer<Record> rows, String... headings) {
        FactTable table = FactTable.of(kind);
        List<Field<?>> fields = new ArrayList<>(List.of(table.batch(), table.line()));
        if (table.key() != null) {
            fields.add(table.key());
        }
        for (String heading : headings) {
            fields.add(table.column(heading));
        }
        if (table.vinKey() != null) {
            fields.add(table.vinKey());
        }
        try (var cursor =
                sql.select(fields)
                        .from(table.table())
                        .where(table.siteNo().eq((short) site.no()))
                        .fetchSize(1_000)
                        .fetchLazy()) {
            for (Record row : cursor) {
                if (counting.counts(site.no(), row.get(table.batch()), row.get(table.line()))) {
                    rows.accept(row);
                }
            }
        }
    }
}
