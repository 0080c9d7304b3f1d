package counterbench.review.store;

import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.SITE;
import static counterbench.db.generated.Tables.VEHICLES_FACT;

import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.campaign.Vehicle;
import counterbench.campaign.store.JooqPacks;
import counterbench.db.OneByOne;
import counterbench.db.generated.tables.records.JobsFactRecord;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import counterbench.review.Horizon;
import counterbench.review.SameVehicle;
import counterbench.review.Terms;
import counterbench.shared.Site;
import counterbench.stock.Receipt;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/**
 * Reads what holds for all jobs of a site. Of jobs and cores it keeps only those that share VIN or
 * serial.
 */
final class TermsReader {
    private final DSLContext sql;
    private final Site site;
    private final Visible visible;
    private final Horizon horizon;
    private final Packs packs;
    private final @Nullable Set<Integer> jobNos;

    /**
     * @param jobNos the jobs whose VINs and serials matter; null for all
     */
    TermsReader(
            DSLContext sql,
            Site site,
            Visible visible,
            Horizon horizon,
            @Nullable Set<Integer> jobNos) {
        this.jobNos = jobNos;
        this.sql = sql;
        this.site = site;
        this.visible = visible;
        this.horizon = horizon;
        this.packs = JooqPacks.all(sql, visible.posted());
    }

    Packs packs() {
        return packs;
    }

    Terms terms(List<Receipt> receipts) {
        return new Terms(
                packs, listedCampaigns(), partUnits(), instruments(), serialTwins(), receipts);
    }

    private Set<String> listedCampaigns() {
        FactTable table = FactTable.of(FactKind.VEHICLES);
        Set<String> listed = new HashSet<>();
        for (String campaign : packs.campaigns()) {
            try (var rows =
                    sql.selectFrom(table.table())
                            .where(VEHICLES_FACT.CAMPAIGN.eq(campaign))
                            .fetchSize(100)
                            .fetchLazy()) {
                for (Record row : rows) {
                    if (visible.address(table, row).isPresent()) {
                        listed.add(campaign);
                        break;
                    }
                }
            }
        }
        return listed;
    }

    private List<Keyed> keyed(FactKind kind) {
        FactTable table = FactTable.of(kind);
        return Keyed.merge(
                table,
                sql.selectFrom(table.table())
                        .where(table.siteNo().eq((short) site.no()))
                        .orderBy(table.batch(), table.line())
                        .fetch(),
                visible);
    }

    private Map<String, PartUnit> partUnits() {
        Map<String, PartUnit> units = new HashMap<>();
        for (Keyed part : keyed(FactKind.PARTS_LIST)) {
            PartUnit.of(text(part.row(), "unit"))
                    .ifPresent(unit -> units.put(text(part.row(), "part"), unit));
        }
        return units;
    }

    private Map<String, Instrument> instruments() {
        Map<String, List<Calibration>> calibrations = new HashMap<>();
        for (Keyed keyed : keyed(FactKind.CALIBRATIONS)) {
            FactRow row = keyed.row();
            calibrations
                    .computeIfAbsent(text(row, "instrument"), i -> new ArrayList<>())
                    .add(
                            new Calibration(
                                    Objects.requireNonNull(row.date("calibrated_on")),
                                    Objects.requireNonNull(row.date("due_on")),
                                    row.text("certificate"),
                                    row.decimal("uncertainty_percent"),
                                    row.decimal("uncertainty")));
        }
        Map<String, Instrument> instruments = new HashMap<>();
        for (Keyed keyed : keyed(FactKind.INSTRUMENTS)) {
            FactRow row = keyed.row();
            String name = text(row, "instrument");
            instruments.put(
                    name,
                    new Instrument(
                            name,
                            text(row, "kind"),
                            text(row, "unit"),
                            row.text("serial"),
                            calibrations.getOrDefault(name, List.of())));
        }
        return instruments;
    }

    private static String text(FactRow row, String heading) {
        return Objects.requireNonNull(row.text(heading), heading);
    }

    /** Serials that the site's removed cores share, read in the order of the index on serials. */
    private Map<String, Set<String>> serialTwins() {
        Map<String, Set<String>> twins = new TreeMap<>();
        if (jobNos == null) {
            addTwins(CORE_TAG.SERIAL.in(sharedSerials()), twins);
        } else {
            OneByOne.fetch(jobNos, this::serialsOf).stream()
                    .distinct()
                    .forEach(serial -> addTwins(CORE_TAG.SERIAL.eq(serial), twins));
        }
        twins.values().removeIf(cores -> cores.size() < 2);
        return twins;
    }

    private Select<Record1<String>> sharedSerials() {
        return DSL.select(CORE_TAG.SERIAL)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()))
                .groupBy(CORE_TAG.SERIAL)
                .having(DSL.count().gt(1));
    }

    private List<String> serialsOf(int jobNo) {
        return sql.select(CORE_TAG.SERIAL)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()), CORE_TAG.JOB_NO.eq(jobNo))
                .fetch(CORE_TAG.SERIAL);
    }

    private void addTwins(Condition which, Map<String, Set<String>> twins) {
        sql.select(CORE_TAG.SERIAL, CORE_TAG.CORE, CORE_TAG.JOB_NO)
                .from(CORE_TAG)
                .where(CORE_TAG.SITE_NO.eq((short) site.no()).and(which))
                .fetchGroups(CORE_TAG.SERIAL)
                .forEach(
                        (serial, cores) -> {
                            if (cores.size() > 1) {
                                twins.put(serial, removedOf(cores));
                            }
                        });
    }

    private Set<String> removedOf(List<? extends Record> cores) {
        return cores.stream()
                .filter(r -> isRemoved(r.get(CORE_TAG.CORE), r.get(CORE_TAG.JOB_NO)))
                .map(r -> r.get(CORE_TAG.CORE))
                .collect(Collectors.toSet());
    }

    private boolean isRemoved(String core, int jobNo) {
        FactTable table = FactTable.of(FactKind.CORES);
        return sql
                .selectFrom(table.table())
                .where(new counterbench.journal.store.JobRange(site.no(), jobNo).contains(table))
                .fetch()
                .stream()
                .filter(r -> visible.address(table, r).isPresent())
                .map(table::row)
                .anyMatch(
                        row ->
                                core.equals(row.text("core"))
                                        && "removed".equals(row.text("event"))
                                        && horizon.reaches(Objects.requireNonNull(row.time("at"))));
    }

    /**
     * Completed jobs of vehicles that several jobs of a campaign name, at any site; read in the
     * order of the index on VINs, a vehicle at a time.
     */
    Map<String, List<SameVehicle>> sameVehicles() {
        Map<Integer, String> sites = new HashMap<>();
        sql.select(SITE.SITE_NO, SITE.SITE_)
                .from(SITE)
                .forEach(r -> sites.put(r.value1().intValue(), r.value2()));
        Map<String, List<SameVehicle>> all = new HashMap<>();
        KeyRuns.each(
                sql.selectFrom(JOBS_FACT).where(vinsThatMatter()).orderBy(JOBS_FACT.VIN_KEY),
                r -> r.getVinKey(),
                rows -> addVehicle(rows, sites, all));
        return all;
    }

    private Condition vinsThatMatter() {
        if (jobNos == null) {
            return JOBS_FACT.VIN_KEY.in(
                    DSL.select(JOBS_FACT.VIN_KEY)
                            .from(JOBS_FACT)
                            .groupBy(JOBS_FACT.VIN_KEY)
                            .having(DSL.count().gt(1)));
        }
        Set<String> vins =
                new HashSet<>(
                        OneByOne.fetch(
                                Ranges.of(jobNos),
                                run ->
                                        sql.select(JOBS_FACT.VIN_KEY)
                                                .from(JOBS_FACT)
                                                .where(run.hold(JOBS_FACT.K, site.no()))
                                                .fetch(JOBS_FACT.VIN_KEY)));
        return JOBS_FACT.VIN_KEY.in(vins);
    }

    private void addVehicle(
            List<JobsFactRecord> rows,
            Map<Integer, String> sites,
            Map<String, List<SameVehicle>> all) {
        if (rows.size() < 2) {
            return;
        }
        FactTable table = FactTable.of(FactKind.JOBS);
        Map<Integer, List<JobsFactRecord>> bySite = new LinkedHashMap<>();
        rows.forEach(
                r -> bySite.computeIfAbsent((int) r.getSiteNo(), s -> new ArrayList<>()).add(r));
        bySite.forEach(
                (siteNo, ofSite) ->
                        Keyed.merge(table, ofSite, visible).stream()
                                .flatMap(k -> new JobReader(horizon).job(0, k.row()).stream())
                                .filter(j -> j.isCompleted())
                                .forEach(
                                        j -> {
                                            String vin = Vehicle.compared(j.vin());
                                            Instant at = Objects.requireNonNull(j.completedAt());
                                            all.computeIfAbsent(
                                                            vehicleKey(j.campaign(), vin),
                                                            v -> new ArrayList<>())
                                                    .add(
                                                            new SameVehicle(
                                                                    sites.getOrDefault(siteNo, "?"),
                                                                    j.job(),
                                                                    j.campaign(),
                                                                    vin,
                                                                    at));
                                        }));
    }

    /** What vehicles are looked up by. */
    static String vehicleKey(String campaign, String vin) {
        return campaign + " " + vin;
    }

    /** A vehicle as its row says. */
    static Vehicle vehicle(FactRow row) {
        return new Vehicle(
                text(row, "campaign"),
                text(row, "vin"),
                row.text("model"),
                Vehicle.attributesOf(row.text("attributes")));
    }
}
