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
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Findings and moments as they are kept. */
final class KeptFindings {
    private KeptFindings() {}

    /** Every kept finding of a site. */
    static List<Finding> all(DSLContext sql, Site site) {
        return read(sql, site, DSL.noCondition());
    }

    /** The kept findings of a site that weigh so much. */
    static List<Finding> of(DSLContext sql, Site site, Severity severity) {
        List<String> rules =
                Arrays.stream(Rule.values())
                        .filter(rule -> rule.severity() == severity)
                        .map(Rule::word)
                        .toList();
        return read(sql, site, KEPT_FINDING.RULE.in(rules));
    }

    private static List<Finding> read(DSLContext sql, Site site, Condition which) {
        List<Finding> findings = new ArrayList<>();
        sql.selectFrom(KEPT_FINDING)
                .where(ofSite(KEPT_FINDING.K, site.no()).and(which))
                .orderBy(KEPT_FINDING.K)
                .forEach(r -> findings.add(finding(site, r)));
        return findings;
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

    /** Puts an outcome in the place of what was kept before. */
    static void replace(DSLContext sql, Site site, Outcome outcome) {
        delete(sql, site.no(), outcome);
        int lastLine = outcome.isOfAll() ? 0 : lastSectionLine(sql, site.no());
        sql.batchInsert(records(site.no(), outcome, lastLine).toList()).execute();
        sql.batchInsert(moments(site.no(), outcome).toList()).execute();
    }

    private static void delete(DSLContext sql, int siteNo, Outcome outcome) {
        if (outcome.isOfAll()) {
            sql.deleteFrom(KEPT_FINDING).where(ofSite(KEPT_FINDING.K, siteNo)).execute();
            sql.deleteFrom(VERDICT).where(ofSite(VERDICT.K, siteNo)).execute();
            return;
        }
        Chunks.each(
                outcome.jobNos(),
                some -> {
                    sql.deleteFrom(KEPT_FINDING)
                            .where(Ranges.of(KEPT_FINDING.K, siteNo, some))
                            .execute();
                    sql.deleteFrom(VERDICT).where(Ranges.of(VERDICT.K, siteNo, some)).execute();
                });
        Chunks.each(
                outcome.sections(),
                some ->
                        sql.deleteFrom(KEPT_FINDING)
                                .where(
                                        Ranges.of(KEPT_FINDING.K, siteNo, List.of(0)),
                                        KEPT_FINDING.SECTION.in(some))
                                .execute());
    }

    private static int lastSectionLine(DSLContext sql, int siteNo) {
        Long last =
                sql.select(DSL.max(KEPT_FINDING.K))
                        .from(KEPT_FINDING)
                        .where(Ranges.of(KEPT_FINDING.K, siteNo, List.of(0)))
                        .fetchOne(DSL.max(KEPT_FINDING.K));
        return last == null ? 0 : JobKey.line(last);
    }

    /** The rows of an outcome that takes the place of everything, in the order of their keys. */
    static Stream<KeptFindingRecord> records(int siteNo, Outcome outcome) {
        return records(siteNo, outcome, 0);
    }

    private static Stream<KeptFindingRecord> records(int siteNo, Outcome outcome, int lastLine) {
        Map<Integer, Integer> lines = new HashMap<>();
        lines.put(0, lastLine);
        return outcome.findings().stream()
                .sorted(Comparator.comparingInt(Outcome.Placed::jobNo))
                .map(
                        one -> {
                            int line = lines.merge(one.jobNo(), 1, Integer::sum);
                            return record(JobKey.of(siteNo, one.jobNo(), line), one);
                        });
    }

    /** The rows of the moments at which something changes by itself, in the order of their keys. */
    static Stream<VerdictRecord> moments(int siteNo, Outcome outcome) {
        return outcome.moments().entrySet().stream()
                .map(m -> new VerdictRecord(JobKey.first(siteNo, m.getKey()), m.getValue()));
    }

    private static KeptFindingRecord record(long key, Outcome.Placed placed) {
        Finding f = placed.finding();
        KeptFindingRecord record = new KeptFindingRecord();
        record.setK(key);
        record.setSection(placed.section());
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
