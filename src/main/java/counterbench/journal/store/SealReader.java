package counterbench.journal.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.SEALS_FACT;

import counterbench.journal.Seal;
import counterbench.journal.SealedMonths;
import java.time.YearMonth;
import org.jooq.DSLContext;

/** Reads which months of a site are closed. */
public final class SealReader {
    private SealReader() {}

    /** Those that are closed now. */
    public static SealedMonths of(DSLContext sql, int siteNo) {
        return upTo(sql, siteNo, Long.MAX_VALUE);
    }

    /** Those that were closed when the entry of that number was the newest. */
    public static SealedMonths upTo(DSLContext sql, int siteNo, long known) {
        return new SealedMonths(
                sql.select(SEALS_FACT.SEALED_MONTH, ENTRY.NUMBER, SEALS_FACT.AT)
                        .from(SEALS_FACT)
                        .join(ENTRY)
                        .on(ENTRY.BATCH.eq(SEALS_FACT.BATCH))
                        .where(SEALS_FACT.SITE_NO.eq((short) siteNo), ENTRY.NUMBER.le(known))
                        .orderBy(ENTRY.NUMBER)
                        .fetch(r -> new Seal(YearMonth.parse(r.value1()), r.value2(), r.value3())));
    }
}
