package counterbench.review.store;

import static counterbench.db.generated.Tables.TOUCHED;

import counterbench.db.generated.tables.records.TouchedRecord;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** What entries touched since a site was last judged. */
final class TouchedThings {
    private final List<TouchedRecord> rows;

    private TouchedThings(List<TouchedRecord> rows) {
        this.rows = rows;
    }

    static TouchedThings read(DSLContext sql, int siteNo) {
        return new TouchedThings(
                sql.selectFrom(TOUCHED).where(TOUCHED.SITE_NO.eq((short) siteNo)).fetch());
    }

    /** Whether nothing was touched. */
    boolean isNothing() {
        return rows.isEmpty();
    }

    /** Whether so much was touched that all must be judged. */
    boolean isAll() {
        return rows.stream().anyMatch(r -> r.getWhat().equals("all"));
    }

    /**
     * The names of what was touched of one sort: job, kit, part, vin, core, serial, shipment,
     * claim, credit.
     */
    Set<String> names(String what) {
        return rows.stream()
                .filter(r -> r.getWhat().equals(what))
                .map(TouchedRecord::getName)
                .collect(Collectors.toSet());
    }

    /** Forgets exactly what was read; what was touched since stays. */
    void delete(DSLContext sql) {
        rows.forEach(
                r ->
                        sql.deleteFrom(TOUCHED)
                                .where(
                                        TOUCHED.SITE_NO.eq(r.getSiteNo()),
                                        TOUCHED.NUMBER.eq(r.getNumber()),
                                        TOUCHED.WHAT.eq(r.getWhat()),
                                        TOUCHED.NAME.eq(r.getName()))
                                .execute());
    }
}
