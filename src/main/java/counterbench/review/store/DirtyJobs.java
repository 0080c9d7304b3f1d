package counterbench.review.store;

import static counterbench.db.generated.Tables.CLAIMS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KIT_LINK;
import static counterbench.db.generated.Tables.MATCHES_FACT;
import static counterbench.db.generated.Tables.VERDICT;

import counterbench.db.JobKey;
import counterbench.db.OneByOne;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.Field;

/** Finds the jobs that must be judged again; 0 stands for what belongs to no job. */
final class DirtyJobs {
    private final DSLContext sql;
    private final int siteNo;
    private final Set<Integer> found = new TreeSet<>();

    private DirtyJobs(DSLContext sql, int siteNo) {
        this.sql = sql;
        this.siteNo = siteNo;
    }

    static Set<Integer> of(DSLContext sql, int siteNo, TouchedThings touched, Instant now) {
        DirtyJobs dirty = new DirtyJobs(sql, siteNo);
        dirty.named(touched.names("job"));
        dirty.withKits(touched.names("kit"));
        dirty.ofVehicles(touched.names("vin"));
        dirty.ofCores(CORE_TAG.CORE, touched.names("core"));
        dirty.ofCores(CORE_TAG.SERIAL, touched.names("serial"));
        dirty.ofClaims(touched.names("claim"));
        dirty.ofClaims(dirty.claimsNamedIn(touched.names("credit")));
        dirty.ofClaims(dirty.claimsMatchedTo(touched.names("credit")));
        dirty.due(now);
        dirty.withSameSerials();
        return dirty.found;
    }

    private <T> void add(Collection<T> names, Function<T, List<Integer>> jobNos) {
        found.addAll(OneByOne.fetch(names, jobNos));
    }

    private void named(Set<String> jobs) {
        add(
                jobs,
                job ->
                        sql.select(JOB_NAME.JOB_NO)
                                .from(JOB_NAME)
                                .where(JOB_NAME.SITE_NO.eq((short) siteNo), JOB_NAME.JOB.eq(job))
                                .fetch(JOB_NAME.JOB_NO));
    }

    private void withKits(Set<String> kits) {
        add(
                kits,
                kit ->
                        sql.select(KIT_LINK.JOB_NO)
                                .from(KIT_LINK)
                                .where(KIT_LINK.SITE_NO.eq((short) siteNo), KIT_LINK.KIT.eq(kit))
                                .fetch(KIT_LINK.JOB_NO));
    }

    private void ofVehicles(Set<String> vins) {
        add(
                vins,
                vin ->
                        sql.select(JOBS_FACT.K)
                                .from(JOBS_FACT)
                                .where(
                                        JOBS_FACT.VIN_KEY.eq(vin),
                                        JOBS_FACT.SITE_NO.eq((short) siteNo))
                                .fetch(r -> JobKey.jobNo(r.value1())));
    }

    private void ofCores(Field<String> by, Set<String> names) {
        add(
                names,
                name ->
                        sql.select(CORE_TAG.JOB_NO)
                                .from(CORE_TAG)
                                .where(CORE_TAG.SITE_NO.eq((short) siteNo), by.eq(name))
                                .fetch(CORE_TAG.JOB_NO));
    }

    private void ofClaims(Set<String> claims) {
        add(
                claims,
                claim ->
                        sql.select(CLAIMS_FACT.K)
                                .from(CLAIMS_FACT)
                                .where(
                                        CLAIMS_FACT.SITE_NO.eq((short) siteNo),
                                        CLAIMS_FACT.CLAIM.eq(claim))
                                .fetch(r -> JobKey.jobNo(r.value1())));
    }

    /** A credit that is matched anew no longer belongs to the claim that it names. */
    private Set<String> claimsNamedIn(Set<String> remittances) {
        return Set.copyOf(
                OneByOne.fetch(
                        remittances,
                        remittance ->
                                sql.selectDistinct(CREDITS_FACT.CLAIM)
                                        .from(CREDITS_FACT)
                                        .where(
                                                CREDITS_FACT.SITE_NO.eq((short) siteNo),
                                                CREDITS_FACT.REMITTANCE.eq(remittance),
                                                CREDITS_FACT.CLAIM.isNotNull())
                                        .fetch(CREDITS_FACT.CLAIM)));
    }

    /** What becomes of a credit concerns the claims that it was matched to. */
    private Set<String> claimsMatchedTo(Set<String> remittances) {
        return Set.copyOf(
                OneByOne.fetch(
                        remittances,
                        remittance ->
                                sql.selectDistinct(MATCHES_FACT.CLAIM)
                                        .from(MATCHES_FACT)
                                        .where(
                                                MATCHES_FACT.SITE_NO.eq((short) siteNo),
                                                MATCHES_FACT.REMITTANCE.eq(remittance))
                                        .fetch(MATCHES_FACT.CLAIM)));
    }

    private void due(Instant now) {
        sql.select(VERDICT.K)
                .from(VERDICT)
                .where(
                        VERDICT.CHANGES_AT.le(now),
                        VERDICT.K.between(JobKey.firstOf(siteNo), JobKey.lastOf(siteNo)))
                .forEach(r -> found.add(JobKey.jobNo(r.value1())));
    }

    private void withSameSerials() {
        List<String> serials =
                OneByOne.fetch(
                        found,
                        jobNo ->
                                sql.select(CORE_TAG.SERIAL)
                                        .from(CORE_TAG)
                                        .where(
                                                CORE_TAG.SITE_NO.eq((short) siteNo),
                                                CORE_TAG.JOB_NO.eq(jobNo))
                                        .fetch(CORE_TAG.SERIAL));
        ofCores(CORE_TAG.SERIAL, Set.copyOf(serials));
    }
}
