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
    private static final int LEAST_ROWS = 18;

    /** Room for two lines, in points. */
    private static final float HEADINGS_HEIGHT = 28;

    private final StreamedWorkbook workbook;
    private final Styles styles;
    private final ChartData data;
    private final SheetLayout source;
    private final CellWriter cells;

    ChartBlock(StreamedWorkbook workbook, Styles styles, Report report, ChartData data) {
        this.workbook = workbook;
        this.styles = styles;
        this.data = data;
        this.source = report.layout().sheet(data.layout().of()).orElseThrow();
        this.cells = new CellWriter(styles, report.zone());
    }

    /**
     * Writes the block.
     *
     * @param first its first row, from 0
     * @param widths of the sheet's columns, in characters
     * @return the row after it
     */
    int write(SXSSFSheet sheet, int first, int[] widths, String heading) {
        List<ChartData.Point> points = data.points();
        if (points.isEmpty()) {
            return first;
        }
        Cell title = sheet.createRow(first).createCell(0);
        title.setCellValue(data.layout().title());
        title.setCellStyle(styles.label());
        writeHeadings(sheet.createRow(first + 1), heading);
        for (int i = 0; i < points.size(); i++) {
            writePoint(sheet.createRow(first + 2 + i), points.get(i));
        }
        int rows = Math.max(LEAST_ROWS, points.size() + 2);
        ChartDrawing drawing = new ChartDrawing(workbook, data.layout(), points, titles());
        drawing.draw(sheet.getSheetName(), first, rows, widths);
        return first + rows;
    }

    private List<String> titles() {
        return data.layout().series().stream().map(this::title).toList();
    }

    private String title(String field) {
        return field.equals(ChartLayout.ROWS) ? source.title() : source.heading(field);
    }

    private void writeHeadings(SXSSFRow row, String heading) {
        row.setHeightInPoints(HEADINGS_HEIGHT);
        heading(row.createCell(0), heading, CellFormat.TEXT);
        List<String> titles = titles();
        for (int i = 0; i < titles.size(); i++) {
            heading(row.createCell(i + 1), titles.get(i), CellFormat.QUANTITY);
        }
    }

    private void heading(Cell cell, String text, CellFormat format) {
        cell.setCellValue(text);
        cell.setCellStyle(styles.headingOf(format));
    }

    private void writePoint(SXSSFRow row, ChartData.Point point) {
        cells.write(row.createCell(0), CellFormat.TEXT, point.category());
        for (int i = 0; i < point.values().size(); i++) {
            cells.write(row.createCell(i + 1), CellFormat.QUANTITY, point.values().get(i));
        }
    }
}
