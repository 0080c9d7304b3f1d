package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ChartLayout;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.ReportRows;
import counterbench.sheets.report.SheetLayout;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How sheets look on the screen and on paper: nothing cut, nothing torn, nothing too small. */
class WorkbookLooksTest {
    private static final SheetLayout.Apart FALLEN =
            new SheetLayout.Apart("state", List.of("withdrawn", "denied"), "of which fallen");

    private static final ChartLayout BY_STATE =
            new ChartLayout(
                    ChartLayout.Type.BAR,
                    "Open by state",
                    "Claims",
                    List.of("state"),
                    List.of("total", ChartLayout.ROWS),
                    "Claims");

    @TempDir Path folder;

    private static ColumnLayout column(String field, CellFormat format, boolean total) {
        return new ColumnLayout(field, field, 0, format, total, "");
    }

    private static SheetLayout claims(int moreColumns, SheetLayout.@Nullable Apart apart) {
        List<ColumnLayout> columns = new ArrayList<>();
        columns.add(column("claim", CellFormat.TEXT, false));
        columns.add(column("total", CellFormat.MONEY, true));
        columns.add(column("state", CellFormat.TEXT, false));
        for (int i = 0; i < moreColumns; i++) {
            columns.add(column("more" + i, CellFormat.TIME, false));
        }
        Set<String> fields = Set.copyOf(columns.stream().map(ColumnLayout::field).toList());
        return new SheetLayout("Claims", "Claims", "", columns, fields, apart);
    }

    private static Map<String, Object> claim(String claim, String total, String state) {
        return Map.of("claim", claim, "total", new BigDecimal(total), "state", state);
    }

    private static List<Map<String, Object>> claims(int count) {
        return IntStream.range(0, count).mapToObj(i -> claim("C-" + i, "10.5", "paid")).toList();
    }

    private XSSFWorkbook written(
            SheetLayout sheet, List<ChartLayout> charts, List<? extends Map<String, Object>> rows)
            throws IOException, InvalidFormatException {
        ReportLayout layout =
                new ReportLayout(
                        "Warranty",
                        ReportLayout.Paper.LETTER,
                        "Notes",
                        List.of(sheet),
                        charts,
                        Set.of());
        Report report =
                new Report(
                        layout,
                        "North garage",
                        ZoneId.of("America/Chicago"),
                        Currency.getInstance("USD"),
                        Instant.parse("2026-03-31T18:05:00Z"),
                        Map.of("Claims", ReportRows.of(rows)),
                        List.of());
        Path file = folder.resolve("warranty.xlsx");
        new WorkbookWriter().write(report, file);
        return new XSSFWorkbook(file.toFile());
    }

    private static double characters(XSSFSheet sheet, int column) {
        return sheet.getColumnWidth(column) / 256.0;
    }

    @Test
    void a_column_fits_a_text_that_comes_late() throws Exception {
        List<Map<String, Object>> rows = new ArrayList<>(claims(500));
        rows.add(claim("C-500", "1234567.89", "paid differently, later on"));
        try (XSSFWorkbook book = written(claims(0, null), List.of(), rows)) {
            XSSFSheet sheet = book.getSheet("Claims");
            assertThat(characters(sheet, 2)).isBetween(25.0, 36.0);
            assertThat(sheet.getRow(501).getCell(2).getCellStyle().getWrapText()).isFalse();
            // the total, 1,239,817.89, is in bold
            assertThat(characters(sheet, 1)).isGreaterThanOrEqualTo(14);
        }
    }

    @Test
    void a_text_that_is_too_long_for_its_column_goes_on_in_a_second_line() throws Exception {
        String text = "waits for the owner, who is away until the summer and asks for patience";
        List<Map<String, Object>> rows =
                List.of(claim("C-1", "10", "paid"), claim("C-2", "10", text));
        try (XSSFWorkbook book = written(claims(0, null), List.of(), rows)) {
            XSSFSheet sheet = book.getSheet("Claims");
            assertThat(characters(sheet, 2)).isEqualTo(36);
            assertThat(sheet.getRow(2).getCell(2).getCellStyle().getWrapText()).isTrue();
            assertThat(sheet.getRow(2).getHeightInPoints()).isEqualTo(3 * 13 + 2);
            assertThat(sheet.getRow(1).getHeightInPoints()).isEqualTo(15);
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 1", "12, 2"})
    void a_sheet_too_wide_for_one_page_repeats_its_first_column_on_the_next(int more, int across)
            throws Exception {
        try (XSSFWorkbook book = written(claims(more, null), List.of(), claims(3))) {
            XSSFSheet sheet = book.getSheet("Claims");
            assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) across);
            assertThat(sheet.getPrintSetup().getLeftToRight()).isEqualTo(across > 1);
            assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
            assertThat(sheet.getRepeatingColumns() != null).isEqualTo(across > 1);
            assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
                    .isEqualTo((short) 1);
            assertThat(sheet.getPaneInformation().getVerticalSplitPosition())
                    .isEqualTo((short) (across - 1));
        }
    }

    /** A page of letter paper on its long side has 504 points, or 33 rows; a chart takes 16. */
    @ParameterizedTest
    @CsvSource({"11, false", "13, true", "100, true"})
    void a_chart_is_not_torn_between_two_pages(int rows, boolean broken) throws Exception {
        try (XSSFWorkbook book = written(claims(0, null), List.of(BY_STATE), claims(rows))) {
            XSSFSheet sheet = book.getSheet("Claims");
            // headings, rows, totals, then two empty rows
            int title = rows + 4;
            assertThat(sheet.getRow(title).getCell(0).getStringCellValue())
                    .isEqualTo("Open by state");
            assertThat(sheet.getRowBreaks()).isEqualTo(broken ? new int[] {title - 1} : new int[0]);
            var anchor =
                    (XSSFClientAnchor) sheet.getDrawingPatriarch().getShapes().get(0).getAnchor();
            // a frame on the edge of a page's rows is drawn on the page beside it, too
            assertThat(anchor.getRow1()).isEqualTo(title);
            assertThat(anchor.getDy1()).isPositive();
            assertThat(anchor.getRow2()).isEqualTo(title + 15);
            assertThat(anchor.getDy2()).isLessThan(15 * Units.EMU_PER_POINT);
        }
    }

    @Test
    void a_title_wider_than_its_table_does_not_run_into_the_frame_beside_it() throws Exception {
        ChartLayout wide =
                new ChartLayout(
                        BY_STATE.type(),
                        "Open by state, as it was at the end of the month",
                        BY_STATE.of(),
                        BY_STATE.categories(),
                        BY_STATE.series(),
                        BY_STATE.place());
        for (ChartLayout chart : List.of(BY_STATE, wide)) {
            try (XSSFWorkbook book = written(claims(0, null), List.of(chart), claims(3))) {
                XSSFSheet sheet = book.getSheet("Claims");
                int title = 7;
                assertThat(sheet.getRow(title).getCell(0).getStringCellValue())
                        .isEqualTo(chart.title());
                var anchor =
                        (XSSFClientAnchor)
                                sheet.getDrawingPatriarch().getShapes().get(0).getAnchor();
                assertThat(anchor.getRow1()).isEqualTo(chart.equals(wide) ? title + 1 : title);
                assertThat(anchor.getRow2()).isEqualTo(title + 15);
            }
        }
    }

    @Test
    void what_a_chart_sums_is_written_as_what_it_is() throws Exception {
        try (XSSFWorkbook book = written(claims(0, null), List.of(BY_STATE), claims(3))) {
            var row = book.getSheet("Claims").getRow(9);
            assertThat(row.getCell(0).getStringCellValue()).isEqualTo("paid");
            assertThat(row.getCell(1).getNumericCellValue()).isEqualTo(31.5);
            assertThat(row.getCell(1).getCellStyle().getDataFormatString()).isEqualTo("#,##0.00");
            assertThat(row.getCell(2).getCellStyle().getDataFormatString()).isEqualTo("#,##0");
        }
    }

    @Test
    void rows_that_must_be_known_apart_have_a_line_below_the_totals() throws Exception {
        List<Map<String, Object>> rows =
                List.of(
                        claim("C-1", "100.10", "paid"),
                        claim("C-2", "20.20", "withdrawn"),
                        claim("C-3", "3.30", "denied"));
        try (XSSFWorkbook book = written(claims(0, FALLEN), List.of(), rows)) {
            XSSFSheet sheet = book.getSheet("Claims");
            assertThat(sheet.getRow(4).getCell(1).getNumericCellValue()).isEqualTo(123.6);
            assertThat(sheet.getRow(5).getCell(0).getStringCellValue())
                    .isEqualTo("of which fallen");
            Cell fallen = sheet.getRow(5).getCell(1);
            assertThat(fallen.getCellFormula())
                    .isEqualTo("SUMIF(C2:C4,\"withdrawn\",B2:B4)+SUMIF(C2:C4,\"denied\",B2:B4)");
            assertThat(fallen.getNumericCellValue()).isEqualTo(23.5);
            assertThat(
                            book.getCreationHelper()
                                    .createFormulaEvaluator()
                                    .evaluate(fallen)
                                    .getNumberValue())
                    .isCloseTo(23.5, within(1e-9));
        }
    }

    @Test
    void there_is_no_such_line_where_there_is_no_such_row() throws Exception {
        try (XSSFWorkbook book = written(claims(0, FALLEN), List.of(), claims(2))) {
            assertThat(book.getSheet("Claims").getLastRowNum()).isEqualTo(3);
        }
    }
}
