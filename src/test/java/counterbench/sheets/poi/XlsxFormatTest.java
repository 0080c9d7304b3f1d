package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactRow;
import counterbench.sheets.Read;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class XlsxFormatTest {
    private static final String[] RECEIPTS = {
        "part", "quantity", "received_at", "lot", "expires_on", "unit_cost"
    };

    @TempDir Path folder;

    private Path workbook(Consumer<XSSFWorkbook> fill) {
        Path file = folder.resolve("march.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            fill.accept(workbook);
            workbook.write(out);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return file;
    }

    /** A sheet of one receipt, as the row is changed by the test. */
    private Path receipt(Consumer<Row> change) {
        return workbook(workbook -> change.accept(receiptRow(workbook)));
    }

    private static Row receiptRow(Workbook workbook) {
        Sheet sheet = workbook.createSheet("Receipts");
        Row headings = sheet.createRow(0);
        for (int i = 0; i < RECEIPTS.length; i++) {
            headings.createCell(i).setCellValue(RECEIPTS[i]);
        }
        Row row = sheet.createRow(1);
        row.createCell(0).setCellValue("QM-4475");
        row.createCell(1).setCellValue(3.5);
        row.createCell(2).setCellValue("2026-03-05 14:20");
        return row;
    }

    private static Cell styled(Row row, int column, String format) {
        Workbook workbook = row.getSheet().getWorkbook();
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        Cell cell = row.createCell(column);
        cell.setCellStyle(style);
        return cell;
    }

    private FactRow fact(Consumer<Row> change) {
        return Read.facts(receipt(change)).get(0);
    }

    private String problem(Consumer<Row> change) {
        return String.join("\n", Read.problems(receipt(change)));
    }

    @Test
    void texts_and_numbers_become_facts() {
        FactRow row = fact(r -> r.createCell(5).setCellValue(0.1 + 0.2));
        assertThat(row.text("part")).isEqualTo("QM-4475");
        assertThat(row.decimal("quantity")).isEqualTo("3.500");
        assertThat(row.decimal("unit_cost")).isEqualTo("0.300000");
        assertThat(row.time("received_at")).isEqualTo("2026-03-05T20:20:00Z");
    }

    @Test
    void date_cells_are_days_and_times_of_the_site() {
        FactRow row =
                fact(
                        r -> {
                            styled(r, 2, "yyyy-mm-dd hh:mm")
                                    .setCellValue(LocalDateTime.of(2026, 3, 5, 14, 20));
                            styled(r, 4, "dd/mm/yyyy")
                                    .setCellValue(LocalDateTime.of(2027, 1, 31, 0, 0));
                        });
        assertThat(row.time("received_at")).isEqualTo("2026-03-05T20:20:00Z");
        assertThat(row.date("expires_on")).isEqualTo("2027-01-31");
    }

    @Test
    void days_of_a_workbook_that_counts_from_1904_are_the_same_days() {
        Path file =
                workbook(
                        w -> {
                            w.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
                            styled(receiptRow(w), 4, "m/d/yy").setCellValue(46023 - 1462);
                        });
        assertThat(Read.facts(file).get(0).date("expires_on")).isEqualTo("2026-01-01");
    }

    @Test
    void a_day_is_not_a_time_and_a_time_is_not_a_day() {
        assertThat(
                        problem(
                                r ->
                                        styled(r, 2, "m/d/yy")
                                                .setCellValue(LocalDateTime.of(2026, 3, 5, 0, 0))))
                .contains("received_at \"2026-03-05\": has no time of day");
        assertThat(
                        problem(
                                r ->
                                        styled(r, 4, "m/d/yy h:mm")
                                                .setCellValue(LocalDateTime.of(2026, 3, 5, 9, 0))))
                .contains("expires_on \"2026-03-05T09:00:00\": has a time of day");
        assertThat(problem(r -> r.createCell(4).setCellValue(46023)))
                .contains("is a number and not a date cell");
    }

    @Test
    void a_number_in_a_text_column_is_taken_where_its_digits_are_what_was_typed() {
        assertThat(fact(r -> r.createCell(3).setCellValue(123456789012345d)).text("lot"))
                .isEqualTo("123456789012345");
        assertThat(problem(r -> r.createCell(3).setCellValue(1.5))).contains("keep how");
        assertThat(problem(r -> r.createCell(3).setCellValue(123456789012345680d)))
                .contains("15 digits");
        assertThat(problem(r -> styled(r, 3, "00000").setCellValue(123)))
                .contains("shown otherwise than it is; format the column as text");
        assertThat(
                        problem(
                                r ->
                                        styled(r, 3, "m/d/yy")
                                                .setCellValue(LocalDateTime.of(2026, 3, 5, 0, 0))))
                .contains("lot \"2026-03-05\": is a date cell; format the column as text");
    }

    @Test
    void formulas_errors_and_truth_values_are_refused_each_with_its_words() {
        assertThat(problem(r -> r.createCell(1).setCellFormula("2+1")))
                .isEqualTo(
                        "march.xlsx, sheet Receipts, row 2, quantity \"=2+1\": is a formula; save"
                                + " the sheet with values only");
        assertThat(problem(r -> r.createCell(3).setCellErrorValue((byte) 42)))
                .contains("lot \"#N/A\": is the error of a formula");
        assertThat(problem(r -> r.createCell(3).setCellValue(true)))
                .contains("lot \"TRUE\": is true or false");
    }

    @Test
    void text_that_looks_like_a_formula_is_text() {
        assertThat(fact(r -> r.createCell(3).setCellValue("=1+1")).text("lot")).isEqualTo("=1+1");
        assertThat(fact(r -> r.createCell(3).setCellValue("'=1+1")).text("lot")).isEqualTo("'=1+1");
    }

    @Test
    void blank_rows_and_rows_of_styles_only_are_passed_over() {
        Path file =
                receipt(
                        r -> {
                            r.getSheet().createRow(2).createCell(0).setCellValue(" ");
                            styled(r.getSheet().createRow(5), 3, "@");
                            r.getSheet().createRow(7).createCell(0).setCellValue("QM-1");
                        });
        assertThat(Read.rows(file)).extracting(row -> row.at().row()).containsExactly(2, 8);
    }

    @Test
    void a_cell_under_no_heading_is_refused() {
        assertThat(problem(r -> r.createCell(9).setCellValue("stray")))
                .contains("row 2 \"stray\": stands under no heading");
    }

    @Test
    void a_sheet_that_is_no_kind_or_empty_is_refused() {
        assertThat(Read.refusal(workbook(w -> w.createSheet("Sheet1"))))
                .singleElement()
                .asString()
                .startsWith(
                        "march.xlsx: the sheet's name \"Sheet1\" is no kind of sheet; call it one"
                                + " of: people");
        assertThat(Read.refusal(workbook(w -> w.createSheet("uses"))))
                .containsExactly(
                        "march.xlsx, sheet uses: is empty; the first row names the columns");
    }

    @Test
    void several_sheets_are_read_each_as_its_kind() {
        Path file =
                workbook(
                        w -> {
                            receiptRow(w);
                            Sheet people = w.createSheet("people");
                            people.createRow(0).createCell(0).setCellValue("name");
                            people.getRow(0).createCell(1).setCellValue("roles");
                            people.createRow(1).createCell(0).setCellValue("Ada");
                            people.getRow(1).createCell(1).setCellValue("lead");
                        });
        assertThat(Read.facts(file))
                .extracting(f -> f.kind().word())
                .containsExactly("receipts", "people");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "prefixed", "inline"})
    void sheets_of_other_programs_are_read(String variant) throws IOException {
        String p = variant.equals("prefixed") ? "x:" : "";
        String ns = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        String xml = variant.equals("prefixed") ? "xmlns:x=\"" + ns + "\"" : "xmlns=\"" + ns + "\"";
        String data =
                """
                <worksheet XMLNS><sheetData><row>
                <c t="inlineStr"><is><t>name</t></is></c><c t="inlineStr"><is><t>roles</t></is></c>
                </row><row><c t="inlineStr"><is><r><t>A</t></r><r><t>da</t></r><rPh sb="0"
                eb="1"><t>no</t></rPh></is></c><c t="str"><v>lead</v></c></row></sheetData></worksheet>
                """
                        .replaceAll("<(/?)(?=[a-zA-Z])", "<$1" + p)
                        .replace("XMLNS", xml);
        Path file = RawWorkbook.write(folder.resolve("people.xlsx"), "people", data);
        assertThat(Read.facts(file))
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsExactly("Ada", "lead"));
    }

    @Test
    void characters_that_xml_cannot_hold_are_seen_and_refused() {
        assertThat(problem(r -> r.createCell(3).setCellValue("a_x0007_b")))
                .contains("lot \"a\\u0007b\"")
                .contains("cannot be seen");
    }
}
