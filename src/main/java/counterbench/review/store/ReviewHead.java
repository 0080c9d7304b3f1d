package counterbench.review.store;

import static counterbench.db.generated.Tables.REVIEW_HEAD;

import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;

/**
 * Up to where a site is judged.
 *
 * @param stamp how often it has been
 * @param isNew whether nothing is kept, or only what other rules found
 */
record ReviewHead(int siteNo, long stamp, String version, boolean isNew) {
    private static final long NONE = 0;

    static ReviewHead read(DSLContext sql, int siteNo, String version) {
        return sql.selectFrom(REVIEW_HEAD)
                .where(REVIEW_HEAD.SITE_NO.eq((short) siteNo))
                .fetchOptional(
                        r ->
                                new ReviewHead(
                                        siteNo,
                                        r.getStamp(),
                                        version,
                                        !version.equals(r.getVersion())))
                .orElse(new ReviewHead(siteNo, NONE, version, true));
    }

    /** Takes the next stamp; false if another shell took it since this was read. */
    boolean advance(DSLContext sql) {
        return stamp == NONE ? insert(sql) : update(sql);
    }

    private boolean insert(DSLContext sql) {
        try {
            sql.insertInto(REVIEW_HEAD)
                    .set(REVIEW_HEAD.SITE_NO, (short) siteNo)
                    .set(REVIEW_HEAD.STAMP, stamp + 1)
                    .set(REVIEW_HEAD.VERSION, version)
                    .execute();
            return true;
        } catch (IntegrityConstraintViolationException e) {
            return false;
        }
    }

    private boolean update(DSLContext sql) {
        return sql.update(REVIEW_HEAD)
                        .set(REVIEW_HEAD.STAMP, stamp + 1)
                        .set(REVIEW_HEAD.VERSION, version)
                        .where(REVIEW_HEAD.SITE_NO.eq((short) siteNo), REVIEW_HEAD.STAMP.eq(stamp))
                        .execute()
                == 1;
    }
}
