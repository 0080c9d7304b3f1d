package counterbench.review.store;

import static counterbench.db.generated.Tables.JOB_NAME;

import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
     * What came of it.
     *
     * @param judgedAgain how many jobs were judged this time
     */
    public record Result(List<Finding> findings, long judgedAgain) {}

    /**
     * Every finding as of now.
     *
     * @param progress is told how many jobs have been judged
     */
    public Result run(Site site, Instant now, LongConsumer progress) {
        for (int tries = 0; tries < TRIES; tries++) {
            Optional<Long> judged = refresh(site, now, progress);
            Optional<List<Finding>> findings =
                    judged.flatMap(n -> kept(site, sql -> KeptFindings.all(sql, site)));
            if (findings.isPresent()) {
                return new Result(findings.get(), judged.orElseThrow());
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

    /** Reads from what is kept; empty if it is not whole, or another shell changed it meanwhile. */
    <T> Optional<T> kept(Site site, Function<DSLContext, T> reading) {
        return store.read(
                sql -> {
                    ReviewHead head = ReviewHead.read(sql, site.no(), VERSION);
                    T read = reading.apply(sql);
                    return head.stands(sql) ? Optional.of(read) : Optional.empty();
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
        Judging judging = new Judging(store, site, now, progress);
        if (pending.all() || isMuch(site, pending.dirty())) {
            judging.all();
        } else if (!judging.some(pending.dirty(), pending.touched())) {
            judging.all();
        }
        return isKept(site, pending, judging.outcome())
                ? Optional.of(judging.judgedJobs())
                : Optional.empty();
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

    private boolean isKept(Site site, Pending pending, Outcome outcome) {
        ReviewHead head = pending.head();
        if (outcome.isOfAll() && outcome.findings().size() > piece) {
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
