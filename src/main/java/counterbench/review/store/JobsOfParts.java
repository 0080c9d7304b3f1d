package counterbench.review.store;

import static counterbench.db.generated.Tables.ISSUES_FACT;
import static counterbench.db.generated.Tables.USES_FACT;

import counterbench.db.JobKey;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import org.jooq.DSLContext;

/** Finds the jobs that took loose parts out of the store or put some back. */
public final class JobsOfParts {
    private JobsOfParts() {}

    /** The numbers of the jobs that touched what lies loose of some parts. */
    public static Set<Integer> touching(DSLContext sql, int siteNo, Collection<String> parts) {
        Set<Integer> jobNos = puttingBack(sql, siteNo, parts);
        Chunks.each(
                parts,
                some ->
                        sql.select(ISSUES_FACT.K)
                                .from(ISSUES_FACT)
                                .where(
                                        ISSUES_FACT.K.between(
                                                JobKey.firstOf(siteNo), JobKey.lastOf(siteNo)),
                                        ISSUES_FACT.PART.in(some))
                                .forEach(r -> jobNos.add(JobKey.jobNo(r.value1()))));
        return jobNos;
    }

    /**
     * The numbers of the jobs that put some parts back into the store. What they put back depends
     * on all that is on their benches; what jobs took out does not, see {@link
     * SiteScan#looseIssues}.
     */
    public static Set<Integer> puttingBack(DSLContext sql, int siteNo, Collection<String> parts) {
        Set<Integer> jobNos = new TreeSet<>();
        Chunks.each(
                parts,
                some ->
                        sql.select(USES_FACT.K)
                                .from(USES_FACT)
                                .where(
                                        USES_FACT.K.between(
                                                JobKey.firstOf(siteNo), JobKey.lastOf(siteNo)),
                                        USES_FACT.CONDITION_WORD.eq("put-back"),
                                        // What names its kit goes back into that, past the store.
                                        USES_FACT.KIT.isNull(),
                                        USES_FACT.PART.in(some))
                                .forEach(r -> jobNos.add(JobKey.jobNo(r.value1()))));
        return jobNos;
    }
}
