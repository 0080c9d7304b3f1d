package counterbench.review.store;

import static counterbench.db.generated.Tables.KEPT_FINDING;
import static counterbench.db.generated.Tables.VERDICT;

import counterbench.db.JobKey;
import counterbench.db.Store;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.TableField;
import org.jooq.TableRecord;

/**
 * Keeps what a review of a whole site found, in many small transactions: H2 takes three times as
 * long for all of it in one. Until the last of them nothing counts as kept.
 */
final class WholeKeeping {
    private final Store store;
    private final Site site;
    private final ReviewHead held;
    private final int piece;

    private WholeKeeping(Store store, Site site, ReviewHead held, int piece) {
        this.store = store;
        this.site = site;
        this.held = held;
        this.piece = piece;
    }

    /**
     * Puts an outcome in the place of all that was kept.
     *
     * @param head where the site stood before it was judged
     * @param touched what was touched by then
     * @param piece how many rows go in one transaction
     * @return false if another shell kept something meanwhile, or began to
     */
    static boolean keep(
            Store store,
            Site site,
            ReviewHead head,
            TouchedThings touched,
            Outcome outcome,
            int piece) {
        return store.writeUnsynced(head::begin)
                .map(held -> new WholeKeeping(store, site, held, piece).keep(outcome, touched))
                .orElse(false);
    }

    private boolean keep(Outcome outcome, TouchedThings touched) {
        return rows(KEPT_FINDING.K, KeptFindings.records(site.no(), outcome).iterator())
                && rows(VERDICT.K, KeptFindings.moments(site.no(), outcome).iterator())
                && store.write(sql -> end(sql, touched));
    }

    private boolean end(DSLContext sql, TouchedThings touched) {
        if (!held.advance(sql)) {
            return false;
        }
        touched.delete(sql);
        return true;
    }

    /** Writes rows in the order of their keys, each piece over what lay between its keys before. */
    private <R extends TableRecord<R>> boolean rows(TableField<R, Long> key, Iterator<R> rows) {
        long from = JobKey.firstOf(site.no());
        while (rows.hasNext()) {
            List<R> some = next(rows);
            long to = some.get(some.size() - 1).get(key);
            if (!replaced(key, from, to, some)) {
                return false;
            }
            from = to + 1;
        }
        return replaced(key, from, JobKey.lastOf(site.no()), List.of());
    }

    private <R> List<R> next(Iterator<R> rows) {
        List<R> some = new ArrayList<>();
        while (some.size() < piece && rows.hasNext()) {
            some.add(rows.next());
        }
        return some;
    }

    private <R extends TableRecord<R>> boolean replaced(
            TableField<R, Long> key, long from, long to, List<R> rows) {
        return store.writeUnsynced(
                sql -> {
                    if (!held.isHeld(sql)) {
                        return false;
                    }
                    sql.deleteFrom(key.getTable()).where(key.between(from, to)).execute();
                    sql.batchInsert(rows).execute();
                    return true;
                });
    }
}
