package counterbench.labels.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.SHIPMENTS_FACT;

import counterbench.shared.Site;
import java.util.List;
import org.jooq.DSLContext;

/**
 * The places of a site's shipments, by the fact that first named each. What was taken back keeps
 * its place, so that a place never changes.
 */
final class ShipmentPlaces {
    private ShipmentPlaces() {}

    /** The names of all shipments that the journal ever bore, in the order of their places. */
    static List<String> all(DSLContext sql, Site site) {
        return sql
                .select(SHIPMENTS_FACT.SHIPMENT)
                .from(SHIPMENTS_FACT)
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(SHIPMENTS_FACT.BATCH))
                .where(SHIPMENTS_FACT.SITE_NO.eq((short) site.no()))
                .orderBy(ENTRY.NUMBER, SHIPMENTS_FACT.LINE)
                .fetch(SHIPMENTS_FACT.SHIPMENT)
                .stream()
                .distinct()
                .toList();
    }
}
