package counterbench.review.store;

import static counterbench.db.generated.Tables.JOB_NAME;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.jooq.DSLContext;

/**
 * The review of now, kept from one time to the next: only jobs that an entry touched, or for which
 * a moment has come that changes their outcome, are judged again. Where much was touched, all is.
 */
public final class KeptReview {
    /** Changes with the rules, so that what older rules found is not kept. */
    private static final String VERSION = "5";

    private static final int TRIES = 5;
    private static final int FEW_JOBS = 200;
    private static final int PART_OF_ALL = 8;

    /** A site of so many jobs is judged as a whole while somebody waits for a prompt. */
    private static final int FEW_IN_ALL = 50;

    /** So many findings are kept in one transaction. */
    private static final int ONE_PIECE = 1_000;

    private final Store store;
    private final int piece;

    public KeptReview(Store store) {
        this(store, ONE_PIECE);
    }

    KeptReview(Store store, int piece) {
        this.store = store;
        this.piece = piece;
    }

    /**
     * Gives every finding as of now, in the order of jobs.
     *
     * @param progress is told how many jobs have been judged
     * @return how many jobs were judged this time
     */
    public long run(Site site, Instant now, LongConsumer progress, Consumer<Finding> findings) {
        for (int tries = 0; tries < TRIES; tries++) {
            Optional<Long> judged = refresh(site, now, progress);
            if (judged.isPresent() && isRead(site, sql -> KeptFindings.each(sql, site, findings))) {
                return judged.get();
            }
        }
        throw new Refused(
                "review of site " + site.site(),
                "other shells review it at the same time",
                "wait until they are done");
    }

    /**
     * Judges what was touched, if that is little and no other shell is about it.
     *
     * @return whether what is kept is that of now
     */
    public boolean catchUpIfLittle(Site site, Instant now) {
        Pending pending = pending(site, now);
        boolean isMuch = pending.all() ? jobsOf(site) > FEW_IN_ALL : isMuch(site, pending.dirty());
        return !isMuch && refresh(site, now, n -> {}, pending).isPresent();
    }

    /** Reads from what is kept, as it is at one moment; false if it is not whole then. */
    boolean isRead(Site site, Consumer<DSLContext> reading) {
        return store.readSnapshot(
                sql -> {
                    boolean whole = !ReviewHead.read(sql, site.no(), VERSION).isNew();
                    if (whole) {
                        reading.accept(sql);
                    }
                    return whole;
                });
    }

    /** Grows whenever what is kept changes. */
    static long stamp(DSLContext sql, Site site) {
        return ReviewHead.read(sql, site.no(), VERSION).stamp();
    }

    /** Brings what is kept up to now; empty if another shell did so meanwhile. */
    private Optional<Long> refresh(Site site, Instant now, LongConsumer progress) {
        return refresh(site, now, progress, pending(site, now));
    }

    private Optional<Long> refresh(Site site, Instant now, LongConsumer progress, Pending pending) {
        if (pending.isNothing()) {
            return Optional.of(0L);
        }
        try (OutcomeToKeep outcome = new OutcomeToKeep()) {
            Judging judging = new Judging(store, site, now, outcome, progress);
            boolean all = pending.all() || isMuch(site, pending.dirty());
            if (all || !judging.some(pending.dirty(), pending.touched())) {
                judging.all();
            }
            return isKept(site, pending, outcome)
                    ? Optional.of(judging.judgedJobs())
                    : Optional.empty();
        }
    }

    /** What is to be judged again. */
    private record Pending(
            ReviewHead head, TouchedThings touched, Set<Integer> dirty, boolean all) {
        boolean isNothing() {
            return !all && dirty.isEmpty() && touched.isNothing();
        }
    }

    private Pending pending(Site site, Instant now) {
        ReviewHead head = store.read(sql -> ReviewHead.read(sql, site.no(), VERSION));
        TouchedThings touched = store.read(sql -> TouchedThings.read(sql, site.no()));
        Set<Integer> dirty = store.read(sql -> DirtyJobs.of(sql, site.no(), touched, now));
        return new Pending(
                head, touched, dirty, head.isNew() || touched.isAll() || dirty.contains(0));
    }

    private boolean isMuch(Site site, Set<Integer> dirty) {
        if (dirty.size() <= FEW_JOBS) {
            return false;
        }
        return dirty.size() > jobsOf(site) / PART_OF_ALL;
    }

    private int jobsOf(Site site) {
        return store.read(sql -> sql.fetchCount(JOB_NAME, JOB_NAME.SITE_NO.eq((short) site.no())));
    }

    private boolean isKept(Site site, Pending pending, OutcomeToKeep outcome) {
        ReviewHead head = pending.head();
        if (outcome.isOfAll() && outcome.count() > piece) {
            return WholeKeeping.keep(store, site, head, pending.touched(), outcome, piece);
        }
        return store.write(
                sql -> {
                    if (!head.advance(sql)) {
                        return false;
                    }
                    KeptFindings.replace(sql, site, outcome);
                    pending.touched().delete(sql);
                    return true;
                });
    }
}
