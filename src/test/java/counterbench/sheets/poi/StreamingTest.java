package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.ParsedRow;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.ReportRows;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads and writes many rows in a process of its own with a heap that could never hold them. */
class StreamingTest {
    private static final int ROWS = 150_000;
    private static final String HEADINGS = "job,part,quantity,condition,at,reason";
    private static final String REASON = "a longer reason that fills some room in the file ";

    @TempDir Path folder;

    /** Counts the rows of a file, or writes one; the process that the test starts. */
    public static void main(String... args) {
        if (!Files.exists(Path.of(args[0]))) {
            writeReport(Path.of(args[0]));
            return;
        }
        SheetFiles files = PoiSheets.files();
        long[] rows = new long[1];
        for (Sheet sheet : files.find(Path.of(args[0]))) {
            files.read(sheet, Set.of(), site -> ZoneOffset.UTC, row -> rows[0] += counted(row));
        }
        System.out.println(rows[0] + " rows");
    }

    private static void writeReport(Path file) {
        ReportRows rows =
                taker -> {
                    for (int i = 0; i < ROWS; i++) {
                        taker.accept(Map.of("job", "J-" + i, "part", "QM-4473", "by", REASON + i));
                    }
                };
        Report report =
                new Report(
                        ReportLayouts.programs("parts"),
                        "North garage",
                        ZoneOffset.UTC,
                        Currency.getInstance("USD"),
                        Instant.EPOCH,
                        Map.of("Movements", rows),
                        List.of());
        new WorkbookWriter().write(report, file);
        System.out.println(ROWS + " rows");
    }

    private static int counted(ParsedRow row) {
        return row.problems().isEmpty() ? 1 : 0;
    }

    @Test
    void rows_of_a_workbook_are_not_kept() throws IOException, InterruptedException {
        Path file =
                RawWorkbook.write(folder.resolve("uses.xlsx"), "uses", StreamingTest::writeSheet);
        assertThat(countedIn24Megabytes(file)).isEqualTo(ROWS + " rows");
    }

    @Test
    void rows_of_a_csv_file_are_not_kept() throws IOException, InterruptedException {
        Path file = folder.resolve("uses.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(HEADINGS + "\n");
            for (int i = 0; i < ROWS; i++) {
                out.write(String.join(",", row(i)) + "\n");
            }
        }
        assertThat(Files.size(file)).isGreaterThan(24_000_000 / 2);
        assertThat(countedIn24Megabytes(file)).isEqualTo(ROWS + " rows");
    }

    @Test
    void rows_that_are_written_are_not_kept() throws IOException, InterruptedException {
        Path file = folder.resolve("parts.xlsx");
        assertThat(countedIn24Megabytes(file)).isEqualTo(ROWS + " rows");
        assertThat(file).isNotEmptyFile();
        assertThat(folder.toFile().list()).containsExactly("parts.xlsx");
    }

    private static List<String> row(int i) {
        return List.of("J-" + i, "QM-4473", "4", "new", "2026-03-05T14:20Z", REASON + i);
    }

    private static void writeSheet(OutputStream out) throws IOException {
        String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        write(out, "<worksheet xmlns=\"" + main + "\"><sheetData>");
        writeRow(out, List.of(HEADINGS.split(",")));
        for (int i = 0; i < ROWS; i++) {
            writeRow(out, row(i));
        }
        write(out, "</sheetData></worksheet>");
    }

    private static void writeRow(OutputStream out, List<String> cells) throws IOException {
        StringBuilder row = new StringBuilder("<row>");
        cells.forEach(
                c -> row.append("<c t=\"inlineStr\"><is><t>").append(c).append("</t></is></c>"));
        write(out, row.append("</row>").toString());
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String countedIn24Megabytes(Path file) throws IOException, InterruptedException {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xmx24m",
                                "-XX:+UseSerialGC",
                                "-cp",
                                System.getProperty("java.class.path"),
                                StreamingTest.class.getName(),
                                file.toString())
                        .redirectErrorStream(true)
                        .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said.strip().lines().reduce((first, last) -> last).orElse("nothing");
    }
}
