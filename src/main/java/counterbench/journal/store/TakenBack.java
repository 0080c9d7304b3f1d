package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.List;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** The facts that a reversal takes back: what they touched, it touches again. */
final class TakenBack {
    private TakenBack() {}

    /**
     * They themselves, or where they are very many the reversal, which touches all.
     *
     * @param number the entry that is reversed
     */
    static List<FactRow> by(FactRow reversal, DSLContext sql, short siteNo, long number) {
        List<FactRow> facts = new ArrayList<>();
        sql.select(ENTRY.BATCH)
                .from(ENTRY)
                .where(ENTRY.SITE_NO.eq(siteNo), ENTRY.NUMBER.eq(number))
                .forEach(entry -> addFacts(reversal, sql, siteNo, entry.value1(), facts));
        return facts.size() > Touched.MOST ? List.of(reversal) : facts;
    }

    private static void addFacts(
            FactRow reversal, DSLContext sql, short siteNo, long batch, List<FactRow> facts) {
        Long line = reversal.whole("line");
        for (FactTable table : FactTable.values()) {
            Condition meant = table.siteNo().eq(siteNo).and(table.batch().eq(batch));
            sql.selectFrom(table.table())
                    .where(line == null ? meant : meant.and(table.line().eq(line.intValue())))
                    .limit(Touched.MOST + 1)
                    .forEach(fact -> facts.add(table.row(fact)));
        }
    }
}
