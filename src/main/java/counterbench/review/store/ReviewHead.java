package counterbench.review.store;

import static counterbench.db.generated.Tables.REVIEW_HEAD;

import java.util.Optional;
import org.jooq.Condition;
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

    /** No version of the rules: what is kept is not whole. */
    private static final String BEING_KEPT = "";

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
        return take(sql, version);
    }

    /**
     * Takes the next stamp for one who keeps a whole review in several transactions. Until {@link
     * #advance} of what this gives, nothing counts as kept, also if that never comes.
     *
     * @return empty if another shell took the stamp since this was read
     */
    Optional<ReviewHead> begin(DSLContext sql) {
        return take(sql, BEING_KEPT)
                ? Optional.of(new ReviewHead(siteNo, stamp + 1, version, true))
                : Optional.empty();
    }

    /** Whether no other shell has taken the next stamp, nor can until the transaction ends. */
    boolean isHeld(DSLContext sql) {
        return sql.select(REVIEW_HEAD.STAMP)
                        .from(REVIEW_HEAD)
                        .where(isThis())
                        .forUpdate()
                        .fetchOne()
                != null;
    }

    private boolean take(DSLContext sql, String mark) {
        return stamp == NONE ? insert(sql, mark) : update(sql, mark);
    }

    /**
     * By a statement that nothing refuses: PostgreSQL gives up a transaction that meets a refusal.
     */
    private boolean insert(DSLContext sql, String mark) {
        try {
            return sql.insertInto(REVIEW_HEAD)
                            .set(REVIEW_HEAD.SITE_NO, (short) siteNo)
                            .set(REVIEW_HEAD.STAMP, stamp + 1)
                            .set(REVIEW_HEAD.VERSION, mark)
                            .onConflict(REVIEW_HEAD.SITE_NO)
                            .doNothing()
                            .execute()
                    == 1;
        } catch (IntegrityConstraintViolationException e) {
            // H2 sees a row of another transaction only when that has ended.
            return false;
        }
    }

    private boolean update(DSLContext sql, String mark) {
        return sql.update(REVIEW_HEAD)
                        .set(REVIEW_HEAD.STAMP, stamp + 1)
                        .set(REVIEW_HEAD.VERSION, mark)
                        .where(isThis())
                        .execute()
                == 1;
    }

    private Condition isThis() {
        return REVIEW_HEAD.SITE_NO.eq((short) siteNo).and(REVIEW_HEAD.STAMP.eq(stamp));
    }
}
