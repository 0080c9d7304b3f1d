package counterbench.shell.demo;

import counterbench.db.Store;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.store.ExportMonth;
import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.ReportRows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Both workbooks of a month for every yard, written while the rest of the demo goes on. */
final class DemoBooks {
    static final YearMonth MONTH = YearMonth.of(2026, 3);

    private final Store store;
    private final Path folder;
    private final List<Supplier<Path>> begun;

    /** Begins to write them. */
    DemoBooks(Store store, List<Site> yards, Path folder, Aside aside) throws IOException {
        this.store = store;
        this.folder = Files.createDirectories(folder);
        this.begun =
                yards.stream()
                        .flatMap(
                                yard ->
                                        Stream.of(BookKind.values())
                                                .map(kind -> aside.begin(() -> write(yard, kind))))
                        .toList();
    }

    /** Waits until they are written; in the order of yards. */
    List<Path> written() {
        return begun.stream().map(Supplier::get).toList();
    }

    /**
     * Begins a workbook that nobody will see, so that its library is loaded while the store is
     * filled.
     */
    static void practise(Aside aside, Path folder) {
        aside.begin(() -> practised(folder.resolve("practice.xlsx")));
    }

    private static boolean practised(Path file) {
        ReportRows row = ReportRows.of(List.of(Map.of("part", "HB-1001")));
        Report report =
                new Report(
                        ReportLayouts.programs(BookKind.PARTS.word()),
                        "practice",
                        ZoneOffset.UTC,
                        Currency.getInstance("USD"),
                        DemoTour.MOMENT,
                        Map.of("Balance", row),
                        List.of());
        new WorkbookWriter().write(report, file);
        return file.toFile().delete();
    }

    private Path write(Site yard, BookKind kind) {
        Path file = folder.resolve(kind.word() + "-" + yard.site() + "-" + MONTH + ".xlsx");
        var request =
                new ExportMonth.Request(
                        kind,
                        new SiteMonth(yard, MONTH),
                        ReportLayouts.programs(kind.word()),
                        DemoTour.MOMENT,
                        file);
        new ExportMonth(store, new WorkbookWriter()).run(request, Progress.SILENT);
        return file;
    }
}
