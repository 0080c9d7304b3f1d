package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ChartLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.SheetLayout;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes a small table of gathered rows and the chart beside it. */
final class ChartBlock {
    private static final int LEAST_ROWS = 16;

    private static final float MARGIN = 2;

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

    /** How many rows it takes. */
    int rows() {
        return Math.max(LEAST_ROWS, points.size() + 2);
    }

    /** Makes room for the table in the columns of a sheet. */
    void measure(Widths widths) {
        for (int i = 0; i < titles().size(); i++) {
            for (String word : titles().get(i).split(" ", -1)) {
                widths.measureInChart(i + 1, word + " ");
            }
        }
        for (ChartData.Point point : points) {
            widths.measureInChart(0, point.category());
            for (int i = 0; i < point.values().size(); i++) {
                widths.measureInChart(i + 1, format(i), point.values().get(i));
            }
        }
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
        writeHeadings(sheet.createRow(first + 1), widths);
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

    private void writeHeadings(SXSSFRow row, int[] widths) {
        String categories = layout.heading(source);
        heading(row.createCell(0), categories, CellFormat.TEXT);
        int lines = Widths.lines(categories, widths[0]);
        List<String> titles = titles();
        for (int i = 0; i < titles.size(); i++) {
            heading(row.createCell(i + 1), titles.get(i), format(i));
            boolean known = i + 1 < widths.length;
            lines = Math.max(lines, known ? Widths.lines(titles.get(i), widths[i + 1]) : 1);
        }
        row.setHeightInPoints(ReportSheet.height(lines) + MARGIN);
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
