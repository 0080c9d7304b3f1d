package counterbench.intake.store;

import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.store.JooqPacks;
import counterbench.db.Scratch;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.Ahead;
import counterbench.intake.Complaints;
import counterbench.intake.ImportReport;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.StagedBatch;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.sheets.ParsedRow;
import counterbench.sheets.RowPosition;
import counterbench.sheets.RowProblem;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** One try at an import. What it staged and did not post is taken away when it is closed. */
final class Attempt implements AutoCloseable {
    private static final Set<FactKind> NAMED_BEFORE =
            Set.of(FactKind.JOBS, FactKind.CORES, FactKind.CLAIMS);

    private final Store store;
    private final SheetFiles files;
    private final ImportPaper.Request request;
    private final ImportPaper.Extra extra;
    private final IntConsumer progress;
    private final Connection connection;
    private final DSLContext sql;
    private final AllPosted posted;
    private final Packs packs;
    private final Set<String> attributes;
    private final Scratch scratch = new Scratch();
    private final Map<String, Boolean> jobs = scratch.map();
    private final Map<String, Site> sites = new HashMap<>();
    private final Map<Integer, SiteIntake> intakes = new HashMap<>();
    private final Map<Integer, Stage> stages = new TreeMap<>();
    private final Map<FactKind, ImportReport.Counts> counts = new EnumMap<>(FactKind.class);
    private final List<RowProblem> problems = new ArrayList<>();
    private final Ahead ahead;
    private int rowsRead;
    private boolean isPosted;

    Attempt(
            Store store,
            SheetFiles files,
            ImportPaper.Request request,
            ImportPaper.Extra extra,
            IntConsumer progress) {
        this.store = store;
        this.files = files;
        this.request = request;
        this.progress = progress;
        this.connection = store.connect();
        this.sql = store.on(connection);
        this.posted = new AllPosted(sql);
        this.extra = extra;
        this.ahead = new Ahead(request.now());
        List<Pack> all = new ArrayList<>(JooqPacks.all(sql, posted).all());
        all.addAll(extra.packs());
        this.packs = new Packs(all);
        this.attributes =
                all.stream()
                        .flatMap(pack -> pack.attributes().keySet().stream())
                        .collect(Collectors.toSet());
        JooqSites.all(sql).forEach(s -> sites.put(s.site(), s));
    }

    /** Reads, judges and posts; empty if another entry came between and all must be asked again. */
    Optional<ImportReport> run(List<Sheet> sheets) {
        extra.facts().forEach(fact -> stage(request.site(), fact));
        bringNames(sheets);
        FactKind kind = null;
        for (Sheet sheet : sheets) {
            if (sheet.kind() != kind) {
                intakes.values().forEach(SiteIntake::endOfKind);
                kind = sheet.kind();
                takeRemovals(kind, sheets);
            }
            read(sheet, sheet.kind() == FactKind.CORES ? this::takeUnlessRemoval : this::take);
        }
        if (!problems.isEmpty() || request.dryRun()) {
            return Optional.of(report(sheets, List.of()));
        }
        stages.values().forEach(Stage::finish);
        return post().map(entries -> report(sheets, entries));
    }

    /** Jobs, core tags and claims are named by rows that are read before their own. */
    private void bringNames(List<Sheet> sheets) {
        for (Sheet sheet : sheets) {
            if (NAMED_BEFORE.contains(sheet.kind())) {
                read(sheet, this::bring);
            }
        }
    }

    /**
     * What happened to a core is kept with the job that it was removed on, so removals are taken
     * first.
     */
    private void takeRemovals(FactKind kind, List<Sheet> sheets) {
        if (kind == FactKind.CORES) {
            sheets.stream()
                    .filter(s -> s.kind() == kind)
                    .forEach(s -> read(s, row -> takeIf(isRemoval(row), row)));
        }
    }

    private void takeUnlessRemoval(ParsedRow row) {
        takeIf(!isRemoval(row), row);
    }

    private void takeIf(boolean wanted, ParsedRow row) {
        if (wanted) {
            take(row);
        }
    }

    private static boolean isRemoval(ParsedRow row) {
        return row.fact() != null && "removed".equals(row.fact().text("event"));
    }

    private void bring(ParsedRow row) {
        FactRow fact = row.fact() == null ? row.rest() : row.fact();
        Site site = siteOf(row);
        if (fact != null && site != null) {
            intake(site).names().bring(fact);
        }
    }

    private void read(Sheet sheet, Consumer<ParsedRow> rows) {
        files.read(sheet, attributes, this::zoneOf, rows);
    }

    private ZoneId zoneOf(@Nullable String site) {
        Site named = site == null ? request.site() : sites.get(site);
        return (named == null ? request.site() : named).zone();
    }

    private @Nullable Site siteOf(ParsedRow row) {
        return row.site() == null ? request.site() : sites.get(row.site());
    }

    private void take(ParsedRow row) {
        progress.accept(++rowsRead);
        FactKind kind = row.at().sheet().kind();
        List<RowProblem> wrong = new ArrayList<>(row.problems());
        Site site = siteOf(row);
        if (site == null) {
            wrong.add(
                    new RowProblem(
                            row.at(),
                            "site",
                            String.valueOf(row.site()),
                            "there is no such site",
                            "write one of " + String.join(", ", new TreeSet<>(sites.keySet()))));
        }
        if (site != null && row.rest() != null) {
            intake(site)
                    .complaints(row.rest(), row.unread())
                    .forEach(c -> wrong.add(problem(row.at(), c)));
        }
        FactRow fact = row.fact();
        if (site != null && fact != null) {
            SiteIntake.Judged judged = intake(site).judge(fact);
            if (judged instanceof SiteIntake.Judged.Refuse refuse) {
                refuse.complaints().forEach(c -> wrong.add(problem(row.at(), c)));
            } else {
                boolean isNew = judged instanceof SiteIntake.Judged.Take;
                count(kind, new ImportReport.Counts(isNew ? 1 : 0, isNew ? 0 : 1, 0));
            }
            if (judged instanceof SiteIntake.Judged.Take take) {
                ahead.look(site, take.row(), row.at());
                stage(site, take.row());
            }
        }
        if (!wrong.isEmpty()) {
            count(kind, new ImportReport.Counts(0, 0, 1));
            problems.addAll(wrong);
        }
    }

    private static RowProblem problem(RowPosition at, Complaints.Complaint complaint) {
        return new RowProblem(
                at, complaint.heading(), complaint.value(), complaint.wrong(), complaint.right());
    }

    private void count(FactKind kind, ImportReport.Counts more) {
        counts.merge(kind, more, ImportReport.Counts::plus);
    }

    private SiteIntake intake(Site site) {
        return intakes.computeIfAbsent(
                site.no(),
                no ->
                        new SiteIntake(
                                new StoredNames(sql, site, posted, packs, jobs, scratch),
                                new HeldFacts(sql, no, posted),
                                request.asNew(),
                                scratch));
    }

    /** Nothing is staged any more once a row was refused: it would only have to be taken away. */
    private void stage(Site site, FactRow row) {
        if (!request.dryRun() && problems.isEmpty()) {
            stages.computeIfAbsent(
                            site.no(),
                            no -> new Stage(store, site, request.person(), request.now(), scratch))
                    .add(row);
        }
    }

    /** Posts all sites' entries in one transaction; empty if what was known must be asked again. */
    private Optional<List<Entry>> post() {
        Optional<List<Entry>> entries = store.write(this::postIfUnchanged);
        isPosted = entries.isPresent();
        return entries;
    }

    private Optional<List<Entry>> postIfUnchanged(DSLContext writing) {
        List<Entry> entries = new ArrayList<>();
        for (Stage stage : stages.values()) {
            StagedBatch.lockHead(writing, stage.site().no());
            long known = posted.at(stage.site().no()).head();
            if (stage.batch().collidesWithEntriesAfter(writing, known)) {
                return Optional.empty();
            }
        }
        for (Stage stage : stages.values()) {
            entries.add(stage.post(writing, draft(stage.site())));
        }
        return Optional.of(entries);
    }

    private Draft draft(Site site) {
        return Draft.of(
                site,
                request.now(),
                request.person(),
                extra.kind(),
                extra.kind() + " " + request.path());
    }

    private ImportReport report(List<Sheet> sheets, List<Entry> entries) {
        int late = stages.values().stream().mapToInt(stage -> stage.batch().late()).sum();
        return new ImportReport(sheets, counts, problems, entries, late, ahead.found());
    }

    @Override
    public void close() {
        if (!isPosted) {
            stages.values().forEach(Stage::discard);
        }
        scratch.close();
        try {
            connection.close();
        } catch (SQLException e) {
            // It only read.
        }
    }
}
