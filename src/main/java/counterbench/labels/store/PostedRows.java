package counterbench.labels.store;

import static counterbench.db.generated.Tables.CORE_TAG;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.KeyedMerge;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.journal.store.Posted;
import counterbench.shared.Site;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Rows of a site that count, looked up by a name that they bear. */
final class PostedRows {
    private final DSLContext sql;
    private final Site site;
    private final Posted posted;

    PostedRows(DSLContext sql, Site site) {
        this.sql = sql;
        this.site = site;
        this.posted = Posted.of(sql, site.no());
    }

    /** The rows with a text under a heading, in the order in which they were recorded. */
    List<FactRow> with(FactKind kind, String heading, String text) {
        return rows(kind, FactTable.of(kind).text(heading).eq(text));
    }

    /** All rows, in the order in which they were recorded. */
    List<FactRow> all(FactKind kind) {
        return rows(kind, DSL.noCondition());
    }

    /** What happened to a core, if it was removed on a job. */
    List<FactRow> ofCore(String tag) {
        return sql.select(CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()), CORE_TAG.CORE.eq(tag))
                .fetchOptional(r -> new JobRange(site.no(), r.value1()))
                .map(job -> ofCore(job, tag))
                .orElse(List.of());
    }

    /** Cores stand in the order of jobs, which is how they are found quickly. */
    private List<FactRow> ofCore(JobRange job, String tag) {
        FactTable table = FactTable.of(FactKind.CORES);
        return rows(FactKind.CORES, job.contains(table).and(table.text("core").eq(tag)));
    }

    private List<FactRow> rows(FactKind kind, Condition which) {
        FactTable table = FactTable.of(kind);
        return sql
                .selectFrom(table.table())
                .where(table.siteNo().eq((short) site.no()), which)
                .orderBy(table.batch(), table.line())
                .fetch()
                .stream()
                .filter(r -> posted.counts(table.batch(r), table.line(r)))
                .map(table::row)
                .toList();
    }

    /** What the rows of a key of one column say together; empty where there are none. */
    Optional<FactRow> keyed(FactKind kind, String key) {
        return KeyedMerge.together(with(kind, kind.key().get(0), key));
    }

    /** Every text under a heading. */
    SortedSet<String> texts(FactKind kind, String heading) {
        FactTable table = FactTable.of(kind);
        SortedSet<String> texts = new TreeSet<>();
        sql.select(table.batch(), table.line(), table.text(heading))
                .from(table.table())
                .where(table.siteNo().eq((short) site.no()))
                .forEach(
                        r -> {
                            String text = r.value3();
                            if (text != null && posted.counts(r.value1(), r.value2())) {
                                texts.add(text);
                            }
                        });
        return texts;
    }
}
