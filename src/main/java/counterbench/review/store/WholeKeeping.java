package counterbench.review.store;

import static counterbench.db.generated.Tables.KEPT_FINDING;
import static counterbench.db.generated.Tables.VERDICT;

import counterbench.db.JobKey;
import counterbench.db.Store;
import counterbench.db.generated.tables.records.KeptFindingRecord;
import counterbench.db.generated.tables.records.VerdictRecord;
import counterbench.shared.Site;
import java.util.ArrayList;
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
            OutcomeToKeep outcome,
            int piece) {
        return store.writeUnsynced(head::begin)
                .map(held -> new WholeKeeping(store, site, held, piece).keep(outcome, touched))
                .orElse(false);
    }

    private boolean keep(OutcomeToKeep outcome, TouchedThings touched) {
        try {
            Pieces<KeptFindingRecord> findings = new Pieces<>(KEPT_FINDING.K);
            KeptFindings.eachRecord(site.no(), outcome, findings::add);
            findings.end();
            Pieces<VerdictRecord> moments = new Pieces<>(VERDICT.K);
            KeptFindings.eachMoment(site.no(), outcome, moments::add);
            moments.end();
            return store.write(sql -> end(sql, touched));
        } catch (Lost e) {
            return false;
        }
    }

    /** Another shell keeps something meanwhile. */
    private static final class Lost extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private boolean end(DSLContext sql, TouchedThings touched) {
        if (!held.advance(sql)) {
            return false;
        }
        touched.delete(sql);
        return true;
    }

    /**
     * Rows in the order of their keys, each piece written over what lay between its keys before.
     */
    private final class Pieces<R extends TableRecord<R>> {
        private final TableField<R, Long> key;
        private final List<R> rows = new ArrayList<>();
        private long from = JobKey.firstOf(site.no());

        Pieces(TableField<R, Long> key) {
            this.key = key;
        }

        void add(R row) {
            rows.add(row);
            if (rows.size() == piece) {
                writeTo(row.get(key));
            }
        }

        void end() {
            writeTo(JobKey.lastOf(site.no()));
        }

        private void writeTo(long to) {
            boolean written =
                    store.writeUnsynced(
                            sql -> {
                                if (!held.isHeld(sql)) {
                                    return false;
                                }
                                sql.deleteFrom(key.getTable())
                                        .where(key.between(from, to))
                                        .execute();
                                sql.batchInsert(rows).execute();
                                return true;
                            });
            if (!written) {
                throw new Lost();
            }
            rows.clear();
            from = to + 1;
        }
    }
}
