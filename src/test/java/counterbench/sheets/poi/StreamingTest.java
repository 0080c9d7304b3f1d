package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.ParsedRow;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads many rows in a process of its own with a heap that could never hold them. */
class StreamingTest {
    private static final int ROWS = 150_000;
    private static final String HEADINGS = "job,part,quantity,condition,at,reason";
    private static final String REASON = "a longer reason that fills some room in the file ";

    @TempDir Path folder;

    /** Counts the rows of a file; the process that the test starts. */
    public static void main(String... args) {
        SheetFiles files = PoiSheets.files();
        long[] rows = new long[1];
        for (Sheet sheet : files.find(Path.of(args[0]))) {
            files.read(sheet, h -> false, site -> ZoneOffset.UTC, row -> rows[0] += counted(row));
        }
        System.out.println(rows[0] + " rows");
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
