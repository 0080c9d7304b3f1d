package counterbench.review.store;

import static counterbench.db.generated.Tables.ACKNOWLEDGEMENTS_FACT;
import static counterbench.db.generated.Tables.CLAIMS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.CREDITS_FACT;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.KIT_LINK;
import static counterbench.db.generated.Tables.MATCHES_FACT;
import static counterbench.db.generated.Tables.VEHICLES_FACT;

import counterbench.db.JobKey;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.ResultQuery;
import org.jooq.SelectFieldOrAsterisk;
import org.jooq.Table;

/**
 * The rows of a range of jobs, each table read once in the order of jobs and all of them side by
 * side, so that memory holds one job at a time. On the embedded store each cursor has a connection
 * of its own: of several lazy results on one connection, H2 keeps only the last lazy.
 */
final class JobRows implements AutoCloseable {
    private static final List<FactKind> IN_JOB_ORDER =
            List.of(
                    FactKind.JOBS,
                    FactKind.ISSUES,
                    FactKind.USES,
                    FactKind.MARKS,
                    FactKind.CORES,
                    FactKind.CLAIMS);

    private final Store store;
    private final int siteNo;
    private final int from;
    private final int to;
    private final List<Connection> connections = new ArrayList<>();
    private final Map<FactKind, RowCursor> facts = new EnumMap<>(FactKind.class);
    private final RowCursor vehicles;
    private final RowCursor kits;
    private final RowCursor acknowledgementsByCore;
    private final RowCursor acknowledgementsBySerial;
    private final RowCursor credits;
    private final RowCursor matched;

    /** The rows of the jobs of a site from one number to another, both included. */
    JobRows(Store store, int siteNo, int from, int to) {
        this.store = store;
        this.siteNo = siteNo;
        this.from = from;
        this.to = to;
        for (FactKind kind : IN_JOB_ORDER) {
            facts.put(kind, RowCursor.byKey(open(sql -> inJobOrder(sql, FactTable.of(kind)))));
        }
        vehicles = RowCursor.byKey(open(this::vehicles));
        kits = RowCursor.byJobNo(open(this::kits));
        acknowledgementsByCore = RowCursor.byJobNo(open(this::acknowledgementsByCore));
        acknowledgementsBySerial = RowCursor.byJobNo(open(this::acknowledgementsBySerial));
        credits = RowCursor.byKey(open(this::credits));
        matched = RowCursor.byKey(open(this::matched));
    }

    private ResultQuery<? extends Record> open(
            Function<DSLContext, ResultQuery<? extends Record>> query) {
        if (connections.isEmpty() || store.isEmbedded()) {
            connections.add(store.connectToRead());
        }
        return query.apply(store.on(connections.get(connections.size() - 1)));
    }

    private Condition inRange(Field<Long> key) {
        return key.between(JobKey.first(siteNo, from), JobKey.last(siteNo, to));
    }

    private Condition inRange(Field<Short> site, Field<Integer> jobNo) {
        return site.eq((short) siteNo).and(jobNo.between(from, to));
    }

    private static List<SelectFieldOrAsterisk> first(Field<?> order, Table<?> table) {
        return List.of(order, table.asterisk());
    }

    private ResultQuery<? extends Record> inJobOrder(DSLContext sql, FactTable table) {
        Field<Long> key = Objects.requireNonNull(table.key());
        return sql.selectFrom(table.table()).where(inRange(key)).orderBy(key);
    }

    private ResultQuery<? extends Record> vehicles(DSLContext sql) {
        return sql.select(first(JOBS_FACT.K, VEHICLES_FACT))
                .from(JOBS_FACT)
                .join(VEHICLES_FACT)
                .on(
                        VEHICLES_FACT.CAMPAIGN.eq(JOBS_FACT.CAMPAIGN),
                        VEHICLES_FACT.VIN_KEY.eq(JOBS_FACT.VIN_KEY))
                .where(inRange(JOBS_FACT.K))
                .orderBy(JOBS_FACT.K, VEHICLES_FACT.BATCH, VEHICLES_FACT.LINE);
    }

    private ResultQuery<? extends Record> kits(DSLContext sql) {
        return sql.select(first(KIT_LINK.JOB_NO, KITS_FACT))
                .from(KIT_LINK)
                .join(KITS_FACT)
                .on(KITS_FACT.SITE_NO.eq(KIT_LINK.SITE_NO), KITS_FACT.KIT.eq(KIT_LINK.KIT))
                .where(inRange(KIT_LINK.SITE_NO, KIT_LINK.JOB_NO))
                .orderBy(KIT_LINK.JOB_NO, KITS_FACT.KIT, KITS_FACT.BATCH, KITS_FACT.LINE);
    }

    private ResultQuery<? extends Record> acknowledgementsByCore(DSLContext sql) {
        return acknowledgements(sql, ACKNOWLEDGEMENTS_FACT.CORE.eq(CORE_TAG.CORE));
    }

    private ResultQuery<? extends Record> acknowledgementsBySerial(DSLContext sql) {
        return acknowledgements(
                sql,
                ACKNOWLEDGEMENTS_FACT
                        .CORE
                        .isNull()
                        .and(ACKNOWLEDGEMENTS_FACT.SERIAL.eq(CORE_TAG.SERIAL)));
    }

    private ResultQuery<? extends Record> acknowledgements(DSLContext sql, Condition same) {
        return sql.select(first(CORE_TAG.JOB_NO, ACKNOWLEDGEMENTS_FACT))
                .from(CORE_TAG)
                .join(ACKNOWLEDGEMENTS_FACT)
                .on(CORE_TAG.SITE_NO.eq(ACKNOWLEDGEMENTS_FACT.SITE_NO).and(same))
                .where(inRange(CORE_TAG.SITE_NO, CORE_TAG.JOB_NO))
                .orderBy(CORE_TAG.JOB_NO, ACKNOWLEDGEMENTS_FACT.BATCH, ACKNOWLEDGEMENTS_FACT.LINE);
    }

    private ResultQuery<? extends Record> credits(DSLContext sql) {
        return sql.select(first(CLAIMS_FACT.K, CREDITS_FACT))
                .from(CLAIMS_FACT)
                .join(CREDITS_FACT)
                .on(
                        CREDITS_FACT.SITE_NO.eq(CLAIMS_FACT.SITE_NO),
                        CREDITS_FACT.CLAIM.eq(CLAIMS_FACT.CLAIM))
                .where(inRange(CLAIMS_FACT.K))
                .orderBy(CLAIMS_FACT.K, CREDITS_FACT.BATCH, CREDITS_FACT.LINE);
    }

    /** Lines of remittances that were matched to claims of the jobs. */
    private ResultQuery<? extends Record> matched(DSLContext sql) {
        return sql.select(first(CLAIMS_FACT.K, CREDITS_FACT))
                .from(CLAIMS_FACT)
                .join(MATCHES_FACT)
                .on(
                        MATCHES_FACT.SITE_NO.eq(CLAIMS_FACT.SITE_NO),
                        MATCHES_FACT.CLAIM.eq(CLAIMS_FACT.CLAIM))
                .join(CREDITS_FACT)
                .on(
                        CREDITS_FACT.SITE_NO.eq(MATCHES_FACT.SITE_NO),
                        CREDITS_FACT.REMITTANCE.eq(MATCHES_FACT.REMITTANCE),
                        CREDITS_FACT.REMITTANCE_LINE.eq(MATCHES_FACT.REMITTANCE_LINE))
                .where(inRange(CLAIMS_FACT.K))
                .orderBy(CLAIMS_FACT.K, CREDITS_FACT.BATCH, CREDITS_FACT.LINE);
    }

    /** The number of the next job that any row belongs to; the greatest integer after the last. */
    int nextJobNo() {
        return facts.values().stream().mapToInt(RowCursor::nextJobNo).min().orElseThrow();
    }

    /** The rows of one job. */
    Rows take(int jobNo) {
        Map<FactKind, List<Record>> taken = new EnumMap<>(FactKind.class);
        facts.forEach((kind, cursor) -> taken.put(kind, cursor.take(jobNo)));
        taken.put(FactKind.VEHICLES, vehicles.take(jobNo));
        taken.put(FactKind.KITS, kits.take(jobNo));
        List<Record> answers = new ArrayList<>(acknowledgementsByCore.take(jobNo));
        answers.addAll(acknowledgementsBySerial.take(jobNo));
        taken.put(FactKind.ACKNOWLEDGEMENTS, answers);
        taken.put(FactKind.CREDITS, credits.take(jobNo));
        taken.put(FactKind.MATCHES, matched.take(jobNo));
        return new Rows(jobNo, taken);
    }

    /** The rows of one job, by kind. */
    record Rows(int jobNo, Map<FactKind, List<Record>> byKind) {
        List<Record> of(FactKind kind) {
            return byKind.getOrDefault(kind, List.of());
        }
    }

    @Override
    public void close() {
        List<RowCursor> cursors = new ArrayList<>(facts.values());
        cursors.addAll(
                List.of(
                        vehicles,
                        kits,
                        acknowledgementsByCore,
                        acknowledgementsBySerial,
                        credits,
                        matched));
        cursors.forEach(RowCursor::close);
        connections.forEach(store::closeReader);
    }
}
