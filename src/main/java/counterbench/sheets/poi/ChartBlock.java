package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ChartLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.SheetLayout;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes a small table of gathered rows and the chart beside it. */
final class ChartBlock {
    private static final int LEAST_ROWS = 18;

    /** Room for two lines, in points. */
    private static final float HEADINGS_HEIGHT = 28;

    private static final int CURRENCY_PLACES = 3;

    private final StreamedWorkbook workbook;
    private final Styles styles;
    private final ChartLayout layout;
    private final List<ChartData.Point> points;
    private final SheetLayout source;
    private final CellWriter cells;

    ChartBlock(StreamedWorkbook workbook, Styles styles, Report report, ChartData data) {
        this.workbook = workbook;
        this.styles = styles;
        this.layout = data.layout();
        this.points = data.points();
        this.source = report.layout().sheet(layout.of()).orElseThrow();
        this.cells = new CellWriter(styles, report.zone());
    }

    /** Whether there is nothing to show. */
    boolean isEmpty() {
        return points.isEmpty();
    }

    /** How high it is, in points. */
    double height() {
        return (rows() + 1) * (double) ReportSheet.ROW_HEIGHT;
    }

    private int rows() {
        return Math.max(LEAST_ROWS, points.size() + 2);
    }

    /** Makes room for the table in the columns of a sheet. */
    void measure(Widths widths) {
        for (ChartData.Point point : points) {
            widths.measureInChart(0, point.category().length(), false);
            for (int i = 0; i < point.values().size(); i++) {
                widths.measureInChart(i + 1, length(i, point.values().get(i)), true);
            }
        }
    }

    private int length(int series, BigDecimal value) {
        int places = format(series) == CellFormat.MONEY ? CURRENCY_PLACES : 0;
        return cells.text(value).length() + places;
    }

    /**
     * Writes the block.
     *
     * @param first its first row, from 0
     * @param widths of the sheet's columns, in characters
     * @return the row after it
     */
    int write(SXSSFSheet sheet, int first, int[] widths) {
        Cell title = sheet.createRow(first).createCell(0);
        title.setCellValue(layout.title());
        title.setCellStyle(styles.label());
        writeHeadings(sheet.createRow(first + 1));
        for (int i = 0; i < points.size(); i++) {
            writePoint(sheet.createRow(first + 2 + i), points.get(i), widths[0]);
        }
        ChartDrawing drawing = new ChartDrawing(workbook, layout, points, titles());
        drawing.draw(sheet.getSheetName(), first, rows(), widths);
        return first + rows();
    }

    private List<String> titles() {
        return layout.series().stream().map(this::title).toList();
    }

    private String title(String field) {
        return field.equals(ChartLayout.ROWS) ? source.title() : source.heading(field);
    }

    /** Sums are written as what they are sums of. */
    private CellFormat format(int series) {
        String field = layout.series().get(series);
        return field.equals(ChartLayout.ROWS)
                ? CellFormat.INTEGER
                : source.format(field).orElse(CellFormat.QUANTITY);
    }

    private void writeHeadings(SXSSFRow row) {
        row.setHeightInPoints(HEADINGS_HEIGHT);
        heading(row.createCell(0), layout.heading(source), CellFormat.TEXT);
        List<String> titles = titles();
        for (int i = 0; i < titles.size(); i++) {
            heading(row.createCell(i + 1), titles.get(i), format(i));
        }
    }

    private void heading(Cell cell, String text, CellFormat format) {
        cell.setCellValue(text);
        cell.setCellStyle(styles.headingOf(format));
    }

    private void writePoint(SXSSFRow row, ChartData.Point point, int width) {
        int lines = Widths.lines(point.category(), width);
        CellFormat format = lines > 1 ? CellFormat.NOTE : CellFormat.TEXT;
        cells.write(row.createCell(0), format, point.category());
        if (lines > 1) {
            row.setHeightInPoints(ReportSheet.height(lines));
        }
        for (int i = 0; i < point.values().size(); i++) {
            cells.write(row.createCell(i + 1), format(i), point.values().get(i));
        }
    }
}
