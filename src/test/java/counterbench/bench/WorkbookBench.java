package counterbench.bench;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.shared.TestSites;
import counterbench.sheets.Cell;
import counterbench.sheets.SheetWriter;
import counterbench.sheets.poi.PoiSheets;
import counterbench.sheets.poi.XlsxFormat;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * Imports one workbook with 1,000,000 rows of {@code uses}, and says seconds, rows a second and the
 * peak of the heap. Run by {@code mvn -q -Pbench -Dbench.class=counterbench.bench.WorkbookBench
 * test-compile exec:exec}.
 */
public final class WorkbookBench {
    private static final Instant NOW = Instant.parse("2026-12-31T12:00:00Z");
    private static final Instant FIRST = Instant.parse("2026-01-05T14:00:00Z");
    private static final Site SITE = TestSites.NORTH;
    private static final int ROWS = 1_000_000;
    private static final int JOBS = 100_000;

    private WorkbookBench() {}

    /** Measures. */
    public static void main(String[] none) throws Exception {
        Path folder = Files.createTempDirectory("counterbench-bench");
        Path pack = Files.writeString(folder.resolve("bench.yaml"), BenchPaper.PACK);
        Path jobs = writeJobs(folder.resolve("jobs.csv"));
        Path uses = writeUses(folder.resolve("uses.xlsx"));
        try (Store store =
                Store.open(
                        StoreAddress.of(folder.resolve("home"), null),
                        new Migrations((s, from) -> {}))) {
            store.run(sql -> JooqSites.add(sql, SITE));
            new LoadPack(store, PoiSheets.files()).run(pack, SITE, "Bo", NOW);
            Measure.printHeadings();
            Measure.print(JOBS, "import jobs.csv", JOBS, () -> imported(store, jobs));
            Measure.print(JOBS, "import uses.xlsx", ROWS, () -> imported(store, uses));
        }
    }

    private static long imported(Store store, Path paper) {
        ImportReport report =
                new ImportPaper(store, PoiSheets.files())
                        .run(
                                new ImportPaper.Request(paper, SITE, "Bo", NOW, false, false),
                                n -> {});
        if (report.isRefused()) {
            throw new IllegalStateException(report.problems().get(0).reason());
        }
        return report.entries().size();
    }

    private static Path writeJobs(Path file) throws Exception {
        try (var out = Files.newBufferedWriter(file)) {
            out.write("job,campaign,vin,opened_at\r\n");
            for (int job = 1; job <= JOBS; job++) {
                String vin = "0BENCH%011d".formatted(job);
                out.write("J-" + job + ",BN-26-001," + vin + "," + FIRST + "\r\n");
            }
        }
        return file;
    }

    private static Path writeUses(Path file) {
        try (SheetWriter out = new XlsxFormat().write(file)) {
            out.sheet("uses");
            out.row(1, cells("job", "part", "quantity", "condition", "at"));
            for (int row = 0; row < ROWS; row++) {
                String job = "J-" + (row % JOBS + 1);
                String at = FIRST.plusSeconds(60L + row / JOBS).toString();
                out.row(row + 2, cells(job, "BN-103", "1", "new", at));
            }
            out.finish();
        }
        return file;
    }

    private static List<Cell> cells(String... texts) {
        return List.of(texts).stream().map(Cell::text).toList();
    }
}
