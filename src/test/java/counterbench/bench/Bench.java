package counterbench.bench;

import counterbench.acts.store.ReadRack;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.journal.Entry;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.store.ExportMonth;
import counterbench.month.store.ReconcileMonth;
import counterbench.people.store.JooqSites;
import counterbench.review.store.FindingBook;
import counterbench.review.store.KeptReview;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.shared.TestSites;
import counterbench.sheets.poi.PoiSheets;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.ReportLayouts;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;

/**
 * Prints seconds, rows a second and the peak of the heap for each part of the main job at each
 * size. Run by {@code mvn -q -Pbench test-compile exec:exec}; other sizes by {@code
 * -Dbench.jobs=2000}.
 */
public final class Bench {
    private static final Instant NOW = Instant.parse("2026-12-31T12:00:00Z");
    private static final YearMonth MONTH = YearMonth.of(2026, 1);
    private static final Site SITE = TestSites.NORTH;

    private final Path folder;
    private final Store store;
    private final int jobs;

    private Bench(Path folder, Store store, int jobs) {
        this.folder = folder;
        this.store = store;
        this.jobs = jobs;
    }

    /** Measures at the sizes that are given, or at 1,000, 10,000 and 100,000 jobs. */
    public static void main(String[] sizes) throws Exception {
        List<Integer> all =
                sizes.length == 0
                        ? List.of(1_000, 10_000, 100_000)
                        : Arrays.stream(sizes).map(Integer::valueOf).toList();
        Measure.printHeadings();
        for (int jobs : all) {
            Path folder = Files.createTempDirectory("counterbench-bench");
            try (Store store =
                    Store.open(
                            StoreAddress.of(folder.resolve("home"), null),
                            new Migrations((s, from) -> {}))) {
                new Bench(folder, store, jobs).run();
            }
        }
    }

    private void run() throws Exception {
        Path pack = Files.writeString(folder.resolve("bench.yaml"), BenchPaper.PACK);
        store.run(sql -> JooqSites.add(sql, SITE));
        new LoadPack(store, PoiSheets.files()).run(pack, SITE, "Bo", NOW);
        long rows = BenchPaper.write(folder.resolve("paper"), 1, jobs);
        Measure.print(jobs, "import", rows, () -> imported("paper"));
        Measure.print(jobs, "review, all", rows, this::review);
        Measure.print(jobs, "review, nothing new", 0, this::review);
        long few = BenchPaper.write(folder.resolve("ten"), jobs + 1, jobs + 10);
        Measure.print(jobs, "import ten jobs", few, () -> imported("ten"));
        Measure.print(jobs, "judge ten jobs", few, this::judgeWhatIsNew);
        Measure.print(jobs, "list all findings", 0, this::review);
        Measure.print(jobs, "rack", rows, this::rack);
        Measure.print(jobs, "reconcile a month", rows, this::reconcile);
        Measure.print(jobs, "export parts", rows, () -> export(BookKind.PARTS));
        Measure.print(jobs, "export warranty", rows, () -> export(BookKind.WARRANTY));
    }

    private long imported(String paper) {
        ImportReport report =
                new ImportPaper(store, PoiSheets.files())
                        .run(
                                new ImportPaper.Request(
                                        folder.resolve(paper), SITE, "Bo", NOW, false, false),
                                n -> {});
        if (report.isRefused()) {
            throw new IllegalStateException(report.problems().get(0).reason());
        }
        return report.entries().size();
    }

    private long review() {
        long[] found = {0};
        new KeptReview(store).run(SITE, NOW, n -> {}, finding -> found[0]++);
        return found[0];
    }

    /** What a review does before it lists: its own work, however much there is to list. */
    private long judgeWhatIsNew() {
        boolean done = new KeptReview(store).catchUpIfLittle(SITE, NOW);
        if (!done) {
            throw new IllegalStateException("so little was not judged by itself");
        }
        return 1;
    }

    private long rack() {
        var found = new FindingBook(store).now(SITE, NOW, ReadRack::isOfCores, n -> {});
        return new ReadRack(store, SITE, NOW).undecided(found, n -> {}).size();
    }

    private long reconcile() {
        var account = new ReconcileMonth(store).run(SITE, MONTH, NOW, ReviewSite.NEWEST, n -> {});
        return account.goods("BN-26-001").size();
    }

    private long export(BookKind kind) {
        ReportLayout layout = new ReportLayouts(folder).layout(kind.word());
        var request =
                new ExportMonth.Request(
                        kind,
                        new SiteMonth(SITE, MONTH),
                        layout,
                        NOW,
                        folder.resolve(kind.word() + ".xlsx"));
        return new ExportMonth(store, new WorkbookWriter())
                .run(request, Progress.SILENT)
                .map(Entry::number)
                .orElse(0L);
    }
}
