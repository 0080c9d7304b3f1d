package counterbench.shell.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CampaignProgressTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void it_says_how_far_campaigns_are_and_writes_the_quarter(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn =
                    larkmere.shellOf(
                            Larkmere.QUINN,
                            new CampaignProgressCommand(larkmere::store),
                            new ExportCampaignCommand(
                                    larkmere::store, larkmere.sites(), new WorkbookWriter()));

            var progress = quinn.line("campaign progress TK-2605 --on 2026-03-31 --format csv");

            assertThat(progress.out().lines())
                    .containsExactly(
                            "campaign,involved,completed,not_needed,exported,stolen,scrapped,"
                                    + "unreachable,outstanding,declined,unlisted",
                            "TK-2605,40,24,7,0,0,1,1,7,1,0");
            assertThat(quinn.line("campaign progress TK-26O5").err()).contains("TK-2605");
            Path file = folder.resolve("q1.xlsx");
            var written = quinn.line("export campaign --quarter 2026-Q1 --to " + file);
            assertThat(written.status()).as(written.err()).isEqualTo(Status.DONE);
            assertSheetsAgree(file);
            assertThat(quinn.line("export campaign --quarter 2026-Q5").status())
                    .isEqualTo(Status.USAGE);
            assertThat(quinn.line("export campaign --quarter 2027-Q1").err())
                    .contains("it has not begun");
        }
    }

    /** Each campaign has in Vehicles by state what its last line of Progress says. */
    private static void assertSheetsAgree(Path file) throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
            Map<String, Map<String, Long>> states =
                    rows(book, "Vehicles").stream()
                            .collect(
                                    Collectors.groupingBy(
                                            row -> cell(row, "Campaign"),
                                            Collectors.groupingBy(
                                                    row -> cell(row, "State"),
                                                    Collectors.counting())));
            List<Map<String, String>> progress =
                    rows(book, "Progress").stream()
                            .filter(row -> cell(row, "Quarter").equals("2026-Q1"))
                            .toList();
            assertThat(progress).hasSizeGreaterThan(2);
            for (Map<String, String> row : progress) {
                Map<String, Long> counted = states.getOrDefault(cell(row, "Campaign"), Map.of());
                assertThat(cell(row, "Completed")).isEqualTo(count(counted, "completed"));
                assertThat(cell(row, "Not needed"))
                        .isEqualTo(count(counted, "inspected, not needed"));
                assertThat(cell(row, "Declined")).isEqualTo(count(counted, "declined"));
                long unlisted =
                        counted.entrySet().stream()
                                .filter(e -> e.getKey().endsWith(", not listed"))
                                .mapToLong(Map.Entry::getValue)
                                .sum();
                assertThat(cell(row, "Not listed")).isEqualTo(String.valueOf(unlisted));
            }
            assertThat(progress).anyMatch(row -> !cell(row, "Not listed").equals("0"));
        }
    }

    private static String count(Map<String, Long> counted, String state) {
        return String.valueOf(counted.getOrDefault(state, 0L));
    }

    private static String cell(Map<String, String> row, String heading) {
        return row.getOrDefault(heading, "");
    }

    private static List<Map<String, String>> rows(XSSFWorkbook book, String sheet) {
        DataFormatter shown = new DataFormatter();
        List<Map<String, String>> rows = new ArrayList<>();
        XSSFSheet from = book.getSheet(sheet);
        for (int i = 1; i <= from.getLastRowNum(); i++) {
            Map<String, String> row = new HashMap<>();
            for (Cell heading : from.getRow(0)) {
                row.put(
                        heading.getStringCellValue(),
                        shown.formatCellValue(from.getRow(i).getCell(heading.getColumnIndex())));
            }
            rows.add(row);
        }
        return rows;
    }
}
