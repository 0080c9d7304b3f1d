package counterbench.intake.store;

import static counterbench.db.generated.Tables.FACT_REF;
import static counterbench.db.generated.Tables.STAGING;

import counterbench.journal.store.FactTable;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/**
 * The right to import at a site. It is held by a row whose heartbeat the importing shell renews
 * with every chunk; the rows that a dead shell left behind are cleared by the next import.
 */
final class Lease {
    private static final Duration DEAD_AFTER = Duration.ofMinutes(2);

    private Lease() {}

    /** Takes the lease, or refuses because somebody else imports. */
    static void take(DSLContext sql, Site site, long batch, String person, Instant now) {
        var other =
                sql.selectFrom(STAGING)
                        .where(STAGING.SITE_NO.eq((short) site.no()))
                        .forUpdate()
                        .fetchOne();
        if (other != null) {
            if (other.getHeartbeat().isAfter(now.minus(DEAD_AFTER))) {
                throw new Refused(
                        "import at site " + site.site(),
                        other.getPerson() + " is importing there just now",
                        "wait until that import has ended, then import again");
            }
            clear(sql, other.getBatch());
        }
        sql.insertInto(STAGING)
                .set(STAGING.SITE_NO, (short) site.no())
                .set(STAGING.BATCH, batch)
                .set(STAGING.PERSON, person)
                .set(STAGING.HEARTBEAT, now)
                .execute();
    }

    /** Says that the import goes on. The store's own clock is read, which all shells share. */
    static void renew(DSLContext sql, long batch) {
        sql.update(STAGING)
                .set(STAGING.HEARTBEAT, DSL.currentInstant())
                .where(STAGING.BATCH.eq(batch))
                .execute();
    }

    static void release(DSLContext sql, long batch) {
        sql.deleteFrom(STAGING).where(STAGING.BATCH.eq(batch)).execute();
    }

    /** Takes away every row of a batch that was never posted, and its lease. */
    static void clear(DSLContext sql, long batch) {
        for (FactTable table : FactTable.values()) {
            sql.deleteFrom(table.table()).where(table.batch().eq(batch)).execute();
        }
        sql.deleteFrom(FACT_REF).where(FACT_REF.BATCH.eq(batch)).execute();
        release(sql, batch);
    }
}
