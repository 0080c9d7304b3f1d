package counterbench.review.store;

import static counterbench.db.generated.Tables.KITS_FACT;

import counterbench.facts.FactKind;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.review.Horizon;
import counterbench.shared.Site;
import counterbench.stock.Kit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** Kits as a site received them, without anything that happened to them since. */
public final class KitReceipts {
    private KitReceipts() {}

    /**
     * The kits received by a moment, by serial.
     *
     * @param which a condition on their rows, which must not part the rows of one kit
     */
    public static List<Kit> at(
            DSLContext sql, Site site, Instant asOf, AllPosted posted, Condition which) {
        Visible visible = new Visible(posted);
        FactReader reader = new FactReader(new Horizon(site, asOf));
        FactTable table = FactTable.of(FactKind.KITS);
        List<Kit> kits = new ArrayList<>();
        KeyRuns.each(
                sql.selectFrom(KITS_FACT)
                        .where(KITS_FACT.SITE_NO.eq((short) site.no()).and(which))
                        .orderBy(KITS_FACT.KIT, KITS_FACT.BATCH, KITS_FACT.LINE),
                r -> r.getKit(),
                rows ->
                        Keyed.merge(table, rows, visible).stream()
                                .flatMap(k -> reader.kit(k.address(), k.row()).stream())
                                .forEach(kits::add));
        return kits;
    }
}
