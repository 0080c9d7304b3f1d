package counterbench.journal.store;

import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.JOURNAL_HEAD;

import counterbench.db.JobKey;
import counterbench.db.Scratch;
import counterbench.facts.FactKind;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/**
 * The numbers that jobs have in keys, and the next free line of each job in each table. Remembers
 * what it has looked up, for the length of one act or import.
 */
final class JobNumbers {
    private static final int FIRST_LINE = 1;

    private final int siteNo;
    private final Scratch scratch;
    private final Map<String, Integer> byJob;
    private final Map<String, Integer> byCore;
    private final Map<FactKind, NextLines> nextLine = new EnumMap<>(FactKind.class);
    private final int atOnce;
    private @Nullable Boolean newSite;
    private int reserved;
    private int reservedUpTo;
    private int firstNew = Integer.MAX_VALUE;

    /**
     * @param atOnce how many numbers for new jobs are reserved at once
     * @param scratch where it remembers what it has looked up
     */
    JobNumbers(int siteNo, int atOnce, Scratch scratch) {
        this.siteNo = siteNo;
        this.atOnce = atOnce;
        this.scratch = scratch;
        this.byJob = scratch.map();
        this.byCore = scratch.map();
    }

    /** The job's number; gives it one if its name is new. */
    int ofJob(DSLContext sql, String job) {
        Integer known = byJob.get(job);
        if (known == null) {
            known = find(sql, job).orElseGet(() -> create(sql, job));
            byJob.put(job, known);
        }
        return known;
    }

    private Optional<Integer> find(DSLContext sql, String job) {
        if (isNewSite(sql)) {
            return Optional.empty();
        }
        return sql.select(JOB_NAME.JOB_NO)
                .from(JOB_NAME)
                .where(JOB_NAME.SITE_NO.eq((short) siteNo), JOB_NAME.JOB.eq(job))
                .fetchOptional(JOB_NAME.JOB_NO);
    }

    /** Whether the site had no jobs when this began, so that there is nothing to look up. */
    private boolean isNewSite(DSLContext sql) {
        if (newSite == null) {
            newSite = !sql.fetchExists(JOB_NAME, JOB_NAME.SITE_NO.eq((short) siteNo));
        }
        return newSite;
    }

    private int create(DSLContext sql, String job) {
        if (reserved == reservedUpTo) {
            reserve(sql);
        }
        int number = reserved++;
        sql.insertInto(JOB_NAME)
                .set(JOB_NAME.SITE_NO, (short) siteNo)
                .set(JOB_NAME.JOB, job)
                .set(JOB_NAME.JOB_NO, number)
                .execute();
        firstNew = Math.min(firstNew, number);
        return number;
    }

    /**
     * Takes the next numbers from the site's head; a number that is not used in the end is left
     * out.
     */
    private void reserve(DSLContext sql) {
        reserved =
                Objects.requireNonNull(
                        sql.select(JOURNAL_HEAD.NEXT_JOB_NO)
                                .from(JOURNAL_HEAD)
                                .where(JOURNAL_HEAD.SITE_NO.eq((short) siteNo))
                                .forUpdate()
                                .fetchOne(JOURNAL_HEAD.NEXT_JOB_NO));
        reservedUpTo = reserved + atOnce;
        sql.update(JOURNAL_HEAD)
                .set(JOURNAL_HEAD.NEXT_JOB_NO, reservedUpTo)
                .where(JOURNAL_HEAD.SITE_NO.eq((short) siteNo))
                .execute();
    }

    /** The number of the job that a core was removed on; 0 for a core that never was. */
    int ofCore(DSLContext sql, String core) {
        return byCore.computeIfAbsent(core, tag -> findCore(sql, tag));
    }

    private int findCore(DSLContext sql, String core) {
        return sql.select(CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) siteNo), CORE_TAG.CORE.eq(core))
                .fetchOptional(CORE_TAG.JOB_NO)
                .orElse(0);
    }

    /** Writes down which job a core was removed on. */
    void removed(DSLContext sql, String core, String serial, int jobNo) {
        sql.insertInto(CORE_TAG, CORE_TAG.SITE_NO, CORE_TAG.CORE, CORE_TAG.JOB_NO, CORE_TAG.SERIAL)
                .values((short) siteNo, core, jobNo, serial)
                .onConflict(CORE_TAG.SITE_NO, CORE_TAG.CORE)
                .doUpdate()
                .set(CORE_TAG.JOB_NO, jobNo)
                .set(CORE_TAG.SERIAL, serial)
                .execute();
        byCore.put(core, jobNo);
    }

    /** The next free key of a job in a table. */
    long nextKey(DSLContext sql, FactTable table, int jobNo) {
        NextLines lines = nextLine.computeIfAbsent(table.kind(), k -> new NextLines(scratch.map()));
        int line =
                jobNo >= firstNew
                        ? lines.ofNew(jobNo - firstNew)
                        : lines.ofHeld(jobNo, () -> nextStored(sql, table, jobNo));
        return JobKey.of(siteNo, jobNo, line);
    }

    private int nextStored(DSLContext sql, FactTable table, int jobNo) {
        Field<Long> key = Objects.requireNonNull(table.key());
        Long last =
                sql.select(DSL.max(key))
                        .from(table.table())
                        .where(key.between(JobKey.first(siteNo, jobNo), JobKey.last(siteNo, jobNo)))
                        .fetchOne(DSL.max(key));
        return last == null ? FIRST_LINE : JobKey.line(last) + 1;
    }

    /** Forgets lines, names and numbers, after what was written with them has been undone. */
    void forget() {
        byJob.clear();
        byCore.clear();
        nextLine.clear();
        newSite = false;
        reserved = 0;
        reservedUpTo = 0;
        firstNew = Integer.MAX_VALUE;
    }
}
