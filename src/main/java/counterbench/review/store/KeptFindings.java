package counterbench.review.store;

import static counterbench.db.generated.Tables.KEPT_FINDING;
import static counterbench.db.generated.Tables.VERDICT;

import counterbench.db.JobKey;
import counterbench.db.generated.tables.records.KeptFindingRecord;
import counterbench.db.generated.tables.records.VerdictRecord;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Findings and moments as they are kept. */
final class KeptFindings {
    private static final int PAGE = 1_000;

    /** What belongs to no job is kept under this. */
    private static final Ranges OF_NO_JOB = new Ranges(0, 0);

    private KeptFindings() {}

    /** Every kept finding of a site, a page at a time; read it in one snapshot. */
    static void each(DSLContext sql, Site site, Consumer<Finding> taker) {
        each(sql, site, DSL.noCondition(), taker);
    }

    /** The kept findings of a site that weigh so much, likewise. */
    static void each(DSLContext sql, Site site, Severity severity, Consumer<Finding> taker) {
        List<String> rules =
                Arrays.stream(Rule.values())
                        .filter(rule -> rule.severity() == severity)
                        .map(Rule::word)
                        .toList();
        each(sql, site, KEPT_FINDING.RULE.in(rules), taker);
    }

    private static void each(DSLContext sql, Site site, Condition which, Consumer<Finding> taker) {
        long from = JobKey.firstOf(site.no());
        while (true) {
            List<KeptFindingRecord> page =
                    sql.selectFrom(KEPT_FINDING)
                            .where(
                                    KEPT_FINDING.K.between(from, JobKey.lastOf(site.no()))
                                            .and(which))
                            .orderBy(KEPT_FINDING.K)
                            .limit(PAGE)
                            .fetch();
            page.forEach(r -> taker.accept(finding(site, r)));
            if (page.size() < PAGE) {
                return;
            }
            from = page.get(PAGE - 1).getK() + 1;
        }
    }

    /** So many kept findings of a site at most, those of the newest jobs. */
    static List<Finding> newest(DSLContext sql, Site site, int most) {
        return sql.selectFrom(KEPT_FINDING)
                .where(ofSite(KEPT_FINDING.K, site.no()))
                .orderBy(KEPT_FINDING.K.desc())
                .limit(most)
                .fetch(r -> finding(site, r));
    }

    private static Condition ofSite(Field<Long> key, int siteNo) {
        return key.between(JobKey.firstOf(siteNo), JobKey.lastOf(siteNo));
    }

    private static Finding finding(Site site, KeptFindingRecord r) {
        return new Finding(
                Rule.of(r.getRule()).orElseThrow(),
                site.site(),
                r.getCampaign(),
                new Subject(
                        SubjectKind.valueOf(r.getSubjectKind().toUpperCase(Locale.ROOT)),
                        r.getSubject(),
                        r.getPart(),
                        r.getStep()),
                month(r.getFoundMonth()),
                r.getMessage(),
                r.getEvidence());
    }

    private static @Nullable YearMonth month(@Nullable Integer number) {
        return number == null ? null : YearMonth.of(number / 100, number % 100);
    }

    /** Puts an outcome that fits memory in the place of what was kept before. */
    static void replace(DSLContext sql, Site site, OutcomeToKeep outcome) {
        delete(sql, site.no(), outcome);
        int lastLine = outcome.isOfAll() ? 0 : lastSectionLine(sql, site.no());
        List<KeptFindingRecord> findings = new ArrayList<>();
        eachRecord(site.no(), outcome, lastLine, findings::add);
        sql.batchInsert(findings).execute();
        List<VerdictRecord> moments = new ArrayList<>();
        eachMoment(site.no(), outcome, moments::add);
        sql.batchInsert(moments).execute();
    }

    private static void delete(DSLContext sql, int siteNo, OutcomeToKeep outcome) {
        if (outcome.isOfAll()) {
            sql.deleteFrom(KEPT_FINDING).where(ofSite(KEPT_FINDING.K, siteNo)).execute();
            sql.deleteFrom(VERDICT).where(ofSite(VERDICT.K, siteNo)).execute();
            return;
        }
        for (Ranges run : Ranges.of(outcome.jobNos())) {
            sql.deleteFrom(KEPT_FINDING).where(run.hold(KEPT_FINDING.K, siteNo)).execute();
            sql.deleteFrom(VERDICT).where(run.hold(VERDICT.K, siteNo)).execute();
        }
        Chunks.each(
                outcome.sections(),
                some ->
                        sql.deleteFrom(KEPT_FINDING)
                                .where(
                                        OF_NO_JOB.hold(KEPT_FINDING.K, siteNo),
                                        KEPT_FINDING.SECTION.in(some))
                                .execute());
    }

    private static int lastSectionLine(DSLContext sql, int siteNo) {
        Long last =
                sql.select(DSL.max(KEPT_FINDING.K))
                        .from(KEPT_FINDING)
                        .where(OF_NO_JOB.hold(KEPT_FINDING.K, siteNo))
                        .fetchOne(DSL.max(KEPT_FINDING.K));
        return last == null ? 0 : JobKey.line(last);
    }

    /** The rows of an outcome that takes the place of everything, in the order of their keys. */
    static void eachRecord(int siteNo, OutcomeToKeep outcome, Consumer<KeptFindingRecord> taker) {
        eachRecord(siteNo, outcome, 0, taker);
    }

    /**
     * @param lastLine the last line that what belongs to no job has already
     */
    private static void eachRecord(
            int siteNo, OutcomeToKeep outcome, int lastLine, Consumer<KeptFindingRecord> taker) {
        long[] last = {JobKey.of(siteNo, 0, lastLine)};
        outcome.eachFinding(
                (jobNo, section, finding) -> {
                    int line = JobKey.jobNo(last[0]) == jobNo ? JobKey.line(last[0]) + 1 : 1;
                    last[0] = JobKey.of(siteNo, jobNo, line);
                    taker.accept(record(last[0], section, finding));
                });
    }

    /** The rows of the moments at which something changes by itself, in the order of their keys. */
    static void eachMoment(int siteNo, OutcomeToKeep outcome, Consumer<VerdictRecord> taker) {
        outcome.eachMoment(
                (jobNo, moment) ->
                        taker.accept(new VerdictRecord(JobKey.first(siteNo, jobNo), moment)));
    }

    private static KeptFindingRecord record(long key, String section, Finding f) {
        KeptFindingRecord record = new KeptFindingRecord();
        record.setK(key);
        record.setSection(section);
        record.setRule(f.rule().word());
        record.setCampaign(f.campaign());
        record.setSubjectKind(f.subject().kind().word());
        record.setSubject(f.subject().name());
        record.setPart(f.subject().part());
        record.setStep(f.subject().step());
        YearMonth month = f.month();
        record.setFoundMonth(month == null ? null : month.getYear() * 100 + month.getMonthValue());
        record.setMessage(f.message());
        record.setEvidence(f.evidence());
        return record;
    }
}
