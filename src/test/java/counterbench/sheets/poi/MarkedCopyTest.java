package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.MarkedCopy;
import counterbench.sheets.Read;
import counterbench.sheets.RowPosition;
import counterbench.sheets.SheetFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkedCopyTest {
    @TempDir Path folder;
    private Path copies;

    @BeforeEach
    void make_room() throws IOException {
        copies = Files.createDirectory(folder.resolve("copies"));
    }

    private Path copyOf(Path file) {
        Map<RowPosition, String> why = new HashMap<>();
        Read.rows(file).stream()
                .flatMap(r -> r.problems().stream())
                .forEach(p -> why.merge(p.at(), p.reason(), (a, b) -> a + "; " + b));
        SheetFiles files = PoiSheets.files();
        return new MarkedCopy(files).write(files.find(file), why::get, copies).get(0);
    }

    @Test
    void a_csv_copy_says_beside_each_refused_row_why() throws IOException {
        Path file =
                Read.file(
                        folder,
                        "people.csv",
                        "name,roles\nAda,lead\n\n\"Bo, jr\",boss\n'=1+1,parts,extra\n");
        assertThat(Files.readString(copyOf(file)))
                .isEqualTo(
                        "\ufeffname,roles,refused_because\r\n"
                                + "Ada,lead,\r\n"
                                + ",,\r\n"
                                + "\"Bo, jr\",boss,\"roles \"\"boss\"\": \"\"boss\"\" is no role;"
                                + " roles are parts, technician, warranty, lead\"\r\n"
                                + "'=1+1,parts,extra,\"has 3 cells under 2 headings; give each"
                                + " heading one cell, and put a cell with a comma into quotation"
                                + " marks\"\r\n");
    }

    @Test
    void a_workbook_copy_keeps_cells_as_they_were() throws IOException {
        String ns = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        String xml =
                "<worksheet xmlns=\""
                        + ns
                        + "\"><sheetData>"
                        + row("part", "quantity", "received_at", "lot")
                        + row("QM-1", "x", "2026-03-05 10:00", "=1+1")
                        + "<row><c t=\"inlineStr\"><is><t>QM-2</t></is></c><c><v>3.5</v></c>"
                        + "<c><f>NOW()</f><v>46086</v></c></row>"
                        + row("QM-3", "4", "2026-03-05 10:00", "L1")
                        + "</sheetData></worksheet>";
        Path file = RawWorkbook.write(folder.resolve("march.xlsx"), "receipts", xml);
        Path copy = copyOf(file);

        assertThat(Cells.of(copy, "receipts"))
                .containsExactly(
                        List.of("part", "quantity", "received_at", "lot", "refused_because"),
                        List.of(
                                "QM-1",
                                "x",
                                "2026-03-05 10:00",
                                "=1+1",
                                "quantity \"x\": is not a number; write a plain decimal such as"
                                        + " 12.5"),
                        List.of(
                                "QM-2",
                                "3.5",
                                "=NOW()",
                                "",
                                "received_at \"=NOW()\": is a formula; save the sheet with values"
                                        + " only"),
                        List.of("QM-3", "4", "2026-03-05 10:00", "L1"));
    }

    @Test
    void a_copy_can_be_corrected_and_marked_again() throws IOException {
        Path file = Read.file(folder, "people.csv", "name,roles\nAda,boss\nBo,chief\n");
        Path copy = copyOf(file);
        Path second =
                Read.file(
                        folder,
                        "people.csv",
                        Files.readString(copy).replace("Ada,boss", "Ada,lead"));
        Files.delete(copy);

        assertThat(Read.problems(second)).hasSize(1);
        assertThat(Files.readString(copyOf(second)))
                .startsWith("\ufeffname,roles,refused_because\r\nAda,lead,\r\nBo,chief,\"roles");
    }

    @Test
    void nothing_is_written_over() {
        Path file = Read.file(folder, "people.csv", "name,roles\nAda,boss\n");
        Read.file(copies, "people.csv", "mine");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> copyOf(file)).getMessage())
                .contains("the file is there already");
    }

    private static String row(String... cells) {
        StringBuilder row = new StringBuilder("<row>");
        for (String cell : cells) {
            Objects.requireNonNull(cell);
            row.append("<c t=\"inlineStr\"><is><t>").append(cell).append("</t></is></c>");
        }
        return row.append("</row>").toString();
    }

    /** The texts of a sheet, read back by our own reader. */
    private static final class Cells {
        static List<List<String>> of(Path file, String name) {
            List<List<String>> rows = new java.util.ArrayList<>();
            SheetFiles files = PoiSheets.files();
            files.read(
                    files.find(file).get(0),
                    new counterbench.sheets.RowSink() {
                        @Override
                        public void headings(counterbench.sheets.SheetRow row) {
                            row(row);
                        }

                        @Override
                        public void row(counterbench.sheets.SheetRow row) {
                            assertThat(row.at().sheet().name()).isEqualTo(name);
                            rows.add(
                                    row.cells().stream()
                                            .map(counterbench.sheets.Cell::text)
                                            .toList());
                        }
                    });
            return rows;
        }
    }
}
