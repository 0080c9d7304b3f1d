package counterbench.journal.store;

import static counterbench.db.generated.Tables.FACT_REF;
import static counterbench.db.generated.Tables.KIT_LINK;

import counterbench.campaign.Vehicle;
import counterbench.db.Scratch;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jooq.BatchBindStep;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Writes the facts of one batch of one site into their tables, a chunk at a time. */
final class FactWriter {
    private final int siteNo;
    private final long batch;
    private final JobNumbers jobs;

    private FactWriter(int siteNo, long batch, JobNumbers jobs) {
        this.siteNo = siteNo;
        this.batch = batch;
        this.jobs = jobs;
    }

    /** A writer for one act, which names few jobs. */
    static FactWriter forAct(int siteNo, long batch, Scratch scratch) {
        return new FactWriter(siteNo, batch, new JobNumbers(siteNo, 1, scratch));
    }

    /** A writer for an import, which may bring many new jobs. */
    static FactWriter forImport(int siteNo, long batch, Scratch scratch) {
        return new FactWriter(siteNo, batch, new JobNumbers(siteNo, 1_000, scratch));
    }

    /**
     * A fact with its place.
     *
     * @param booked the month in which it counts, if it counts in one
     */
    record Placed(int line, @Nullable YearMonth booked, FactRow row) {}

    /**
     * Writes a chunk. If the surrounding transaction fails, {@link #forget} before trying again.
     */
    void write(DSLContext sql, Collection<Placed> facts) {
        Map<FactKind, List<Keyed>> byKind = new EnumMap<>(FactKind.class);
        List<Keyed> keyed = facts.stream().map(f -> keyed(sql, f)).toList();
        keyed.forEach(
                k -> byKind.computeIfAbsent(k.fact().row().kind(), x -> new ArrayList<>()).add(k));
        byKind.forEach((kind, rows) -> insert(sql, FactTable.of(kind), rows));
        writeRefs(sql, keyed);
        writeLinks(sql, facts);
    }

    /** Forgets what was looked up, after a chunk was undone. */
    void forget() {
        jobs.forget();
    }

    private void insert(DSLContext sql, FactTable table, List<Keyed> rows) {
        List<Field<?>> fields = table.inserted();
        Object[] blanks = new Object[fields.size()];
        BatchBindStep insert =
                sql.batch(
                        sql.insertInto(DSL.table(table.table().getQualifiedName()))
                                .columns(fields)
                                .values(blanks));
        for (Keyed row : rows) {
            insert = insert.bind(bindings(table, row));
        }
        insert.execute();
    }

    /** A fact with its key in job order, where its table has one. */
    private record Keyed(Placed fact, @Nullable Long key) {}

    private Keyed keyed(DSLContext sql, Placed fact) {
        FactTable table = FactTable.of(fact.row().kind());
        return new Keyed(
                fact,
                table.isInJobOrder() ? jobs.nextKey(sql, table, jobNo(sql, fact.row())) : null);
    }

    private @Nullable Object[] bindings(FactTable table, Keyed keyed) {
        Placed fact = keyed.fact();
        List<@Nullable Object> values = new ArrayList<>(table.columns().size() + 7);
        if (table.isInJobOrder()) {
            values.add(keyed.key());
        }
        values.add((short) siteNo);
        values.add(batch);
        values.add(fact.line());
        values.add(fact.row().ref());
        values.add(number(fact.booked()));
        values.addAll(fact.row().values());
        if (table.vinKey() != null) {
            Object vin = fact.row().values().get(table.vinIndex());
            values.add(vin == null ? null : Vehicle.compared((String) vin));
        }
        return values.toArray();
    }

    private static @Nullable Integer number(@Nullable YearMonth month) {
        return month == null ? null : month.getYear() * 100 + month.getMonthValue();
    }

    private int jobNo(DSLContext sql, FactRow row) {
        if (row.kind() != FactKind.CORES) {
            return jobs.ofJob(sql, Objects.requireNonNull(row.text("job")));
        }
        String core = Objects.requireNonNull(row.text("core"));
        if ("removed".equals(row.text("event"))) {
            int jobNo = jobs.ofJob(sql, Objects.requireNonNull(row.text("job")));
            jobs.removed(sql, core, Objects.requireNonNullElse(row.text("serial"), ""), jobNo);
            return jobNo;
        }
        return jobs.ofCore(sql, core);
    }

    private void writeRefs(DSLContext sql, List<Keyed> facts) {
        List<Keyed> withRef = facts.stream().filter(k -> k.fact().row().ref() != null).toList();
        if (withRef.isEmpty()) {
            return;
        }
        BatchBindStep insert =
                sql.batch(
                        sql.insertInto(
                                        FACT_REF,
                                        FACT_REF.SITE_NO,
                                        FACT_REF.KIND,
                                        FACT_REF.REF,
                                        FACT_REF.BATCH,
                                        FACT_REF.LINE,
                                        FACT_REF.K)
                                .values((Short) null, null, null, null, null, null));
        for (Keyed keyed : withRef) {
            Placed fact = keyed.fact();
            insert =
                    insert.bind(
                            (short) siteNo,
                            fact.row().kind().word(),
                            fact.row().ref(),
                            batch,
                            fact.line(),
                            keyed.key());
        }
        insert.execute();
    }

    private void writeLinks(DSLContext sql, Collection<Placed> facts) {
        List<Object[]> links = new ArrayList<>();
        Set<String> linked = new HashSet<>();
        for (Placed fact : facts) {
            FactKind kind = fact.row().kind();
            String kit =
                    kind == FactKind.ISSUES || kind == FactKind.USES
                            ? fact.row().text("kit")
                            : null;
            if (kit != null) {
                int jobNo = jobs.ofJob(sql, Objects.requireNonNull(fact.row().text("job")));
                if (linked.add(jobNo + "/" + kit)) {
                    links.add(new Object[] {(short) siteNo, kit, jobNo});
                }
            }
        }
        if (!links.isEmpty()) {
            sql.batch(
                            sql.insertInto(
                                            KIT_LINK,
                                            KIT_LINK.SITE_NO,
                                            KIT_LINK.KIT,
                                            KIT_LINK.JOB_NO)
                                    .values((Short) null, null, null)
                                    .onConflict(KIT_LINK.SITE_NO, KIT_LINK.KIT, KIT_LINK.JOB_NO)
                                    .doNothing())
                    .bind(links.toArray(Object[][]::new))
                    .execute();
        }
    }
}
