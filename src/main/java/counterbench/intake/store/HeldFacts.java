package counterbench.intake.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.FACT_REF;

import counterbench.campaign.Vehicle;
import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.HeldRows;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.shared.Address;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** What the store held when an import began, for the questions that an import asks. */
final class HeldFacts {
    private final DSLContext sql;
    private final int siteNo;
    private final AllPosted posted;
    private final Map<FactKind, Boolean> empty = new EnumMap<>(FactKind.class);
    private final Map<FactKind, Boolean> withoutRefs = new EnumMap<>(FactKind.class);
    private final Set<Long> importBatches;

    HeldFacts(DSLContext sql, int siteNo, AllPosted posted) {
        this.sql = sql;
        this.siteNo = siteNo;
        this.posted = posted;
        this.importBatches =
                new HashSet<>(
                        sql.select(ENTRY.BATCH)
                                .from(ENTRY)
                                .where(
                                        ENTRY.SITE_NO.eq((short) siteNo),
                                        ENTRY.KIND.eq(ImportPaper.ENTRY_KIND))
                                .fetch(ENTRY.BATCH));
    }

    /** The rows that count under the key of a row. */
    List<FactRow> byKey(FactRow row) {
        FactTable table = FactTable.of(row.kind());
        if (isEmpty(table)) {
            return List.of();
        }
        Condition key = DSL.noCondition();
        for (String heading : row.kind().key()) {
            key = key.and(equal(table, heading, Objects.requireNonNull(row.get(heading))));
        }
        return sql
                .selectFrom(table.table())
                .where(scope(table).and(key))
                .orderBy(table.batch(), table.line())
                .fetch()
                .stream()
                .filter(
                        r ->
                                posted.counts(
                                        r.get(table.siteNo()),
                                        r.get(table.batch()),
                                        r.get(table.line())))
                .map(table::row)
                .toList();
    }

    @SuppressWarnings("unchecked") // The value is of the column's own type.
    private static Condition equal(FactTable table, String heading, Object value) {
        if (heading.equals("vin")) {
            return Objects.requireNonNull(table.vinKey()).eq(Vehicle.compared((String) value));
        }
        return ((Field<Object>) table.column(heading)).eq(value);
    }

    private Condition scope(FactTable table) {
        return table.kind().belongsToStore()
                ? DSL.noCondition()
                : table.siteNo().eq((short) siteNo);
    }

    /** Whether the store held no fact of a kind. */
    boolean hasNone(FactKind kind) {
        return isEmpty(FactTable.of(kind));
    }

    private boolean isEmpty(FactTable table) {
        return empty.computeIfAbsent(
                table.kind(),
                k -> !sql.fetchExists(DSL.selectOne().from(table.table()).where(scope(table))));
    }

    /** A row that bears a number of the paper's own, and whether it has been taken back. */
    record WithRef(FactRow row, boolean reversed) {}

    /** The posted row of that kind and ref; the one that counts before one that was taken back. */
    Optional<WithRef> byRef(FactKind kind, String ref) {
        if (withoutRefs.computeIfAbsent(kind, this::hasNoRefs)) {
            return Optional.empty();
        }
        return sql
                .select(FACT_REF.BATCH, FACT_REF.LINE, FACT_REF.K)
                .from(FACT_REF)
                .where(
                        FACT_REF.SITE_NO.eq((short) siteNo),
                        FACT_REF.KIND.eq(kind.word()),
                        FACT_REF.REF.eq(ref))
                .orderBy(FACT_REF.BATCH.desc())
                .fetch()
                .stream()
                .filter(r -> posted.at(siteNo).numberOf(r.value1()) != 0)
                .map(r -> withRef(FactTable.of(kind), r.value1(), r.value2(), r.value3()))
                .min((a, b) -> Boolean.compare(a.reversed(), b.reversed()));
    }

    private boolean hasNoRefs(FactKind kind) {
        return !sql.fetchExists(
                DSL.selectOne()
                        .from(FACT_REF)
                        .where(FACT_REF.SITE_NO.eq((short) siteNo), FACT_REF.KIND.eq(kind.word())));
    }

    private WithRef withRef(FactTable table, long batch, int line, @Nullable Long key) {
        Condition place = table.batch().eq(batch).and(table.line().eq(line));
        FactRow row =
                sql.selectFrom(table.table())
                        .where(key == null ? place : Objects.requireNonNull(table.key()).eq(key))
                        .fetchOptional(table::row)
                        .orElseThrow();
        return new WithRef(row, !posted.counts(siteNo, batch, line));
    }

    /** Holds every fact of a kind that imports recorded on a job, taken back or not. */
    void importedOnJob(FactKind kind, String job, HeldRows rows) {
        FactTable table = FactTable.of(kind);
        JobRange.find(sql, siteNo, job)
                .ifPresent(range -> imported(table, range.contains(table), rows));
    }

    /** Holds every fact of a kind that imports recorded at the site, taken back or not. */
    void importedAtSite(FactKind kind, HeldRows rows) {
        FactTable table = FactTable.of(kind);
        imported(table, table.siteNo().eq((short) siteNo), rows);
    }

    private void imported(FactTable table, Condition where, HeldRows rows) {
        sql.selectFrom(table.table())
                .where(where)
                .forEach(
                        r -> {
                            if (importBatches.contains(r.get(table.batch()))) {
                                boolean counts =
                                        posted.counts(
                                                siteNo, r.get(table.batch()), r.get(table.line()));
                                rows.hold(table.row(r), counts);
                            }
                        });
    }

    /** A fact and where it stands. */
    record Standing(Address address, FactRow row) {}

    /**
     * The newest fact that an import recorded, that counts and that is equal to a row in its
     * required cells.
     *
     * @param job the job that it is kept with; empty if with none
     */
    Optional<Standing> alike(FactRow row, String job) {
        FactTable table = FactTable.of(row.kind());
        Optional<Condition> where =
                job.isEmpty()
                        ? Optional.of(table.siteNo().eq((short) siteNo))
                        : JobRange.find(sql, siteNo, job).map(range -> range.contains(table));
        return where.flatMap(place -> alike(table, place.and(atTimesOf(row, table)), row));
    }

    private static Condition atTimesOf(FactRow row, FactTable table) {
        Condition times = DSL.noCondition();
        for (Column column : row.kind().columns()) {
            if (column.required() && column.type() == ColumnType.TIME) {
                String heading = column.heading();
                times = times.and(equal(table, heading, Objects.requireNonNull(row.get(heading))));
            }
        }
        return times;
    }

    private Optional<Standing> alike(FactTable table, Condition where, FactRow row) {
        String required = Canonical.requiredCells(row);
        return sql
                .selectFrom(table.table())
                .where(where)
                .orderBy(table.batch().desc(), table.line().desc())
                .fetch()
                .stream()
                .filter(r -> importBatches.contains(r.get(table.batch())))
                .filter(r -> posted.counts(siteNo, r.get(table.batch()), r.get(table.line())))
                .filter(r -> Canonical.requiredCells(table.row(r)).equals(required))
                .map(
                        r ->
                                new Standing(
                                        new Address(
                                                posted.at(siteNo).numberOf(r.get(table.batch())),
                                                r.get(table.line())),
                                        table.row(r)))
                .findFirst();
    }

    private static boolean same(Column column, @Nullable Object before, @Nullable Object said) {
        if (before == null || said == null) {
            return before == null && said == null;
        }
        return Canonical.text(column, before).equals(Canonical.text(column, said));
    }

    /** The headings in which two rows differ; none if they say the same. */
    static List<String> differences(FactRow held, FactRow row) {
        return row.kind().columns().stream()
                .filter(c -> !same(c, held.get(c.heading()), row.get(c.heading())))
                .map(Column::heading)
                .toList();
    }
}
