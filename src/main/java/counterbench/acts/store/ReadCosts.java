package counterbench.acts.store;

import static counterbench.db.generated.Tables.RECEIPTS_FACT;

import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;

/** Reads what loose parts cost at other sites of the store. */
final class ReadCosts {
    private ReadCosts() {}

    static Optional<BigDecimal> elsewhere(DSLContext sql, Site site, String part, Instant by) {
        AllPosted posted = new AllPosted(sql);
        return sql
                .selectFrom(RECEIPTS_FACT)
                .where(
                        RECEIPTS_FACT.PART.eq(part),
                        RECEIPTS_FACT.SITE_NO.ne((short) site.no()),
                        RECEIPTS_FACT.RECEIVED_AT.le(by),
                        RECEIPTS_FACT.UNIT_COST.isNotNull())
                .orderBy(RECEIPTS_FACT.RECEIVED_AT.desc(), RECEIPTS_FACT.BATCH, RECEIPTS_FACT.LINE)
                .fetch()
                .stream()
                .filter(r -> posted.counts(r.getSiteNo(), r.getBatch(), r.getLine()))
                .map(r -> r.getUnitCost())
                .findFirst();
    }
}
