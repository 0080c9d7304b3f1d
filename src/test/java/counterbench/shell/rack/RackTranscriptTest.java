package counterbench.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.home.Home;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Runner;
import counterbench.shell.Status;
import counterbench.shell.Transcript;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A shipment from the rack to the return centre's answer, as it is typed and seen. */
class RackTranscriptTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_shipment_goes_its_way_as_written_down(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);

            Transcript.of("rack").replay(new Runner(maren.commands()), maren.circumstances());

            Path file = folder.resolve("manifest.xlsx");
            var output =
                    maren.with(Home.VARIABLE, folder.resolve("home").toString())
                            .line("export manifest --shipment SH-N14 --to \"" + file + "\"");
            assertThat(output.status()).as(output.screen()).isEqualTo(Status.DONE);
            assertManifest(file);
        }
    }

    private static void assertManifest(Path file) throws Exception {
        try (var in = Files.newInputStream(file);
                Workbook book = WorkbookFactory.create(in)) {
            Map<String, String> core = row(book.getSheet("Cores"), 1);
            assertThat(core)
                    .containsEntry("Core tag", "NC-0072")
                    .containsEntry("Serial", "7P734340")
                    .containsEntry("Part", "HB-3011")
                    .containsEntry("Job", "N-167")
                    .containsEntry("Minutes required", "18")
                    .containsEntry("Drained by", "Otis")
                    .containsEntry("Plugs", "4")
                    .containsEntry("Packaging", "carton");
            assertThat(row(book.getSheet("Cores"), 2))
                    .containsEntry("Core tag", "NC-0074")
                    .containsEntry("Plugs", "0")
                    .containsEntry("Plugs required", "2");
            assertThat(row(book.getSheet("Shipment"), 1))
                    .containsEntry("Shipment", "SH-N14")
                    .containsEntry("Cores", "2");
            assertThat(text(book.getSheet("Notes")))
                    .contains("Left to the shipper.")
                    .contains("49 CFR 173.29")
                    .containsPattern(
                            "Let go by the lead 2026-[0-9-]+ [0-9:]+, Maren: the caps are in the same"
                                    + " box")
                    .contains("What stood against it core NC-0074");
        }
    }

    private static Map<String, String> row(Sheet sheet, int row) {
        DataFormatter format = new DataFormatter();
        Map<String, String> cells = new HashMap<>();
        sheet.getRow(0)
                .forEach(
                        heading ->
                                cells.put(
                                        heading.getStringCellValue(),
                                        format.formatCellValue(
                                                sheet.getRow(row)
                                                        .getCell(heading.getColumnIndex()))));
        return cells;
    }

    private static String text(Sheet sheet) {
        DataFormatter format = new DataFormatter();
        StringBuilder text = new StringBuilder();
        sheet.forEach(
                row -> row.forEach(cell -> text.append(format.formatCellValue(cell)).append(' ')));
        return text.toString();
    }
}
