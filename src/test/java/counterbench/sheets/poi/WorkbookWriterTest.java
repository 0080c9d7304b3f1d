package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Quantity;
import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ChartLayout;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.ReportRows;
import counterbench.sheets.report.SheetLayout;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads back what was written, by the library's own in-memory model. */
class WorkbookWriterTest {
    private static final Instant NOON = Instant.parse("2026-03-31T18:05:00Z");

    @TempDir Path folder;

    private static ColumnLayout column(String field, CellFormat format, boolean total) {
        return new ColumnLayout(field, "The " + field, 0, format, total, "means " + field);
    }

    private static final SheetLayout KITS =
            new SheetLayout(
                    "Kits",
                    "Kits",
                    "All kits.",
                    List.of(
                            column("kit", CellFormat.TEXT, false),
                            column("day", CellFormat.DATE, false),
                            column("at", CellFormat.TIME, false),
                            column("held", CellFormat.QUANTITY, false),
                            column("cost", CellFormat.MONEY, true)),
                    Set.of("kit", "day", "at", "held", "cost", "hidden"),
                    null);

    private static final ChartLayout BY_KIT =
            new ChartLayout(
                    ChartLayout.Type.COLUMN,
                    "Cost by kit",
                    "Kits",
                    List.of("kit"),
                    List.of("cost", ChartLayout.ROWS),
                    "Kits");

    private Path write(int mostRows, List<ChartLayout> charts, ReportRows rows) {
        ReportLayout layout =
                new ReportLayout(
                        "Parts & more",
                        ReportLayout.Paper.A4,
                        "Notes",
                        List.of(KITS),
                        charts,
                        Set.of());
        Report report =
                new Report(
                        layout,
                        "North garage, March 2026",
                        ZoneId.of("America/Chicago"),
                        Currency.getInstance("USD"),
                        NOON,
                        Map.of("Kits", rows),
                        List.of(new Report.Note("Journal", "entry 12, hash =abc")));
        Path file = folder.resolve("parts.xlsx");
        new WorkbookWriter(mostRows).write(report, file);
        return file;
    }

    private XSSFWorkbook written(List<Map<String, ?>> rows) throws IOException {
        return open(write(1000, List.of(), ReportRows.of(rows)));
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        return new XSSFWorkbook(Files.newInputStream(file));
    }

    private static ReportRows kits(int count) {
        return taker ->
                IntStream.range(0, count)
                        .forEach(
                                i ->
                                        taker.accept(
                                                Map.of(
                                                        "kit",
                                                        "K-" + i % 3,
                                                        "cost",
                                                        new BigDecimal("10.10"))));
    }

    @Test
    void days_times_and_numbers_are_real_ones() throws IOException {
        try (XSSFWorkbook workbook =
                written(
                        List.of(
                                Map.of(
                                        "kit",
                                        "K-1",
                                        "day",
                                        LocalDate.of(2026, 3, 5),
                                        "at",
                                        Instant.parse("2026-03-05T20:20:00Z"),
                                        "held",
                                        Quantity.of("3.5"),
                                        "cost",
                                        new BigDecimal("480.00"))))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            assertThat(sheet.getRow(1).getCell(1).getLocalDateTimeCellValue())
                    .isEqualTo("2026-03-05T00:00:00");
            assertThat(sheet.getRow(1).getCell(1).getCellStyle().getDataFormatString())
                    .isEqualTo("yyyy-mm-dd");
            assertThat(sheet.getRow(1).getCell(2).getLocalDateTimeCellValue())
                    .isEqualTo(LocalDateTime.of(2026, 3, 5, 14, 20));
            assertThat(sheet.getRow(1).getCell(3).getNumericCellValue()).isEqualTo(3.5);
            assertThat(sheet.getRow(1).getCell(4).getCellStyle().getDataFormatString())
                    .isEqualTo("#,##0.00");
        }
    }

    @Test
    void text_that_a_spreadsheet_would_run_is_text() throws IOException {
        // CWE-1236; OWASP ASVS 5.0, 1.2.10
        try (XSSFWorkbook workbook =
                written(
                        List.of(
                                Map.of("kit", "=1+1"),
                                Map.of("kit", "-5"),
                                Map.of("kit", "+49"),
                                Map.of("kit", "@x"),
                                Map.of("kit", "\t=1"),
                                Map.of("kit", "00123")))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            for (int i = 1; i <= 4; i++) {
                Cell cell = sheet.getRow(i).getCell(0);
                assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
                assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
            }
            assertThat(sheet.getRow(5).getCell(0).getStringCellValue()).isEqualTo("\\u0009=1");
            assertThat(sheet.getRow(6).getCell(0).getStringCellValue()).isEqualTo("00123");
        }
    }

    @Test
    void a_number_of_more_digits_than_a_cell_keeps_is_text() throws IOException {
        try (XSSFWorkbook workbook =
                written(
                        List.of(
                                Map.of("cost", new BigDecimal("1234567890123456.78")),
                                Map.of("cost", new BigDecimal("1234567890123.45"))))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            assertThat(sheet.getRow(1).getCell(4).getStringCellValue())
                    .isEqualTo("1234567890123456.78");
            assertThat(new BigDecimal(sheet.getRow(2).getCell(4).getRawValue()))
                    .isEqualByComparingTo("1234567890123.45");
        }
    }

    @Test
    void a_total_is_a_formula_with_its_value_stored() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(), kits(10)))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            Cell total = sheet.getRow(11).getCell(4);
            assertThat(total.getCellFormula()).isEqualTo("SUBTOTAL(9,E2:E11)");
            assertThat(total.getNumericCellValue()).isEqualTo(101.0);
            assertThat(sheet.getRow(11).getCell(0).getStringCellValue()).isEqualTo("Total");
            assertThat(
                            workbook.getCreationHelper()
                                    .createFormulaEvaluator()
                                    .evaluate(total)
                                    .getNumberValue())
                    .isEqualTo(101.0, org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    @Test
    void a_full_sheet_goes_on_in_a_second_one_and_the_total_sums_both() throws IOException {
        try (XSSFWorkbook workbook = open(write(8, List.of(), kits(15)))) {
            assertThat(IntStream.range(0, 4).mapToObj(workbook::getSheetName))
                    .containsExactly("Kits", "Kits (2)", "Kits (3)", "Notes");
            assertThat(workbook.getSheet("Kits").getLastRowNum()).isEqualTo(6);
            Cell total = workbook.getSheet("Kits (3)").getRow(4).getCell(4);
            assertThat(total.getCellFormula())
                    .isEqualTo(
                            "SUBTOTAL(9,Kits!E2:E7)+SUBTOTAL(9,'Kits (2)'!E2:E7)"
                                    + "+SUBTOTAL(9,E2:E4)");
            assertThat(total.getNumericCellValue()).isEqualTo(151.5);
        }
    }

    @Test
    void headings_are_frozen_filtered_and_repeated_in_print() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(), kits(2)))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            assertThat(sheet.getRow(0).getCell(3).getStringCellValue()).isEqualTo("The held");
            assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
                    .isEqualTo((short) 1);
            assertThat(sheet.getCTWorksheet().getAutoFilter().getRef()).isEqualTo("A1:E3");
            assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
            assertThat(sheet.getFitToPage()).isTrue();
            assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
            assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
            assertThat(sheet.getFooter().getRight()).isEqualTo("Page &P of &N");
            assertThat(sheet.getHeader().getLeft()).isEqualTo("&BParts && more");
        }
    }

    @Test
    void the_workbook_says_what_it_is_and_names_no_person() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(), kits(2)))) {
            var said = workbook.getProperties().getCoreProperties();
            assertThat(said.getTitle()).isEqualTo("Parts & more - North garage, March 2026");
            assertThat(said.getCreator()).isEqualTo("Counterbench");
            assertThat(said.getCreated()).isEqualTo(java.util.Date.from(NOON));
            assertThat(said.getLastModifiedByUser()).isNull();

            XSSFSheet notes = workbook.getSheet("Notes");
            assertThat(texts(notes))
                    .contains("Parts & more", "Journal", "entry 12, hash =abc", "All kits.")
                    .contains("The kit", "means kit");
        }
    }

    private static List<String> texts(XSSFSheet sheet) {
        List<String> texts = new java.util.ArrayList<>();
        sheet.forEach(
                row ->
                        row.forEach(
                                cell -> {
                                    if (cell.getCellType() == CellType.STRING) {
                                        texts.add(cell.getStringCellValue());
                                    }
                                }));
        return texts;
    }

    @Test
    void a_chart_stands_below_its_rows_with_its_values_stored() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(BY_KIT), kits(10)))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            XSSFChart chart = sheet.getDrawingPatriarch().getCharts().get(0);
            assertThat(chart.getTitleText().toString()).isEqualTo("Cost by kit");
            var series = chart.getChartSeries().get(0).getSeries(0);
            assertThat(series.getCategoryData().getDataRangeReference())
                    .isEqualTo("Kits!$A$17:$A$19");
            assertThat(series.getValuesData().getPointAt(0)).isEqualTo(40.4);
            assertThat(sheet.getRow(16).getCell(0).getStringCellValue()).isEqualTo("K-0");
            assertThat(sheet.getRow(16).getCell(1).getNumericCellValue()).isEqualTo(40.4);
            assertThat(sheet.getRow(16).getCell(2).getNumericCellValue()).isEqualTo(4);
        }
    }

    @Test
    void a_sheet_without_rows_has_its_headings_and_says_none() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(BY_KIT), kits(0)))) {
            XSSFSheet sheet = workbook.getSheet("Kits");
            assertThat(sheet.getLastRowNum()).isEqualTo(1);
            assertThat(sheet.getRow(1).getCell(0).getStringCellValue()).isEqualTo("none");
        }
    }

    @Test
    void a_field_that_the_layout_does_not_know_is_a_fault_of_the_program() {
        assertThatThrownBy(
                        () -> write(1000, List.of(), ReportRows.of(List.of(Map.of("kitt", "K-1")))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("kitt");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_text_longer_than_a_cell_is_cut_and_says_so() throws IOException {
        try (XSSFWorkbook workbook = open(write(1000, List.of(), one("x".repeat(40_000))))) {
            assertThat(workbook.getSheet("Kits").getRow(1).getCell(0).getStringCellValue())
                    .hasSize(32_767)
                    .endsWith("x…");
        }
    }

    private static ReportRows one(String kit) {
        return ReportRows.of(List.of(Map.of("kit", kit)));
    }

    @Test
    void long_notes_go_on_in_the_next_row() {
        assertThat(NotesSheet.wrapped("one two three four", 9))
                .containsExactly("one two", "three", "four");
        assertThat(NotesSheet.wrapped("", 9)).containsExactly("");
    }
}
