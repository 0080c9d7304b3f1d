package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.SheetLayout;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * Writes the last sheet: what the workbook is, the charts that are placed here, which sheets there
 * are and what their columns mean. Long texts go on in the next row, so that every program shows
 * them whole.
 */
final class NotesSheet {
    private static final int[] WIDTHS = {26, 24, 14, 14, 14, 14, 14};
    private static final int LINE = 88;
    private static final float ROW_HEIGHT = ReportSheet.ROW_HEIGHT;

    private final StreamedWorkbook workbook;
    private final Styles styles;
    private final Report report;
    private final SXSSFSheet sheet;
    private final CellWriter cells;
    private int next;

    /** A sheet of the workbook and how many rows it has. */
    record Written(SheetLayout layout, long rows) {}

    NotesSheet(StreamedWorkbook workbook, Styles styles, Report report) {
        this.workbook = workbook;
        this.styles = styles;
        this.report = report;
        this.sheet = workbook.createSheet(report.layout().notes());
        this.cells = new CellWriter(styles, report.zone());
    }

    void write(List<Written> sheets, List<ChartData> charts) {
        for (int i = 0; i < WIDTHS.length; i++) {
            sheet.setColumnWidth(i, WIDTHS[i] * 256);
        }
        sheet.setDefaultRowHeightInPoints(ROW_HEIGHT);
        sheet.setDisplayGridlines(false);
        PrintSetup.apply(sheet, report, false);
        put(row(), 0, report.layout().title(), styles.title());
        put(row(), 0, report.subject(), styles.plain());
        next++;
        report.notes().forEach(note -> lines(note.label(), note.text()));
        PrintedPage printed = PrintedPage.of(report.layout().paper(), false, WIDTHS);
        PageRoom room = new PageRoom(printed, next * (double) ROW_HEIGHT, next);
        writeCharts(charts, room);
        room.keepTogether(sheet, next + 1, sheets.size() + 1);
        writeSheets(sheets);
        sheets.forEach(s -> writeColumns(s.layout(), room));
    }

    private void writeCharts(List<ChartData> charts, PageRoom room) {
        for (ChartData chart : charts) {
            ChartBlock block = new ChartBlock(workbook, styles, report, chart);
            if (chart.layout().place().equals(ReportLayout.NOTES) && !block.isEmpty()) {
                next++;
                room.keepTogether(sheet, next, block.rows());
                next = block.write(sheet, next, WIDTHS);
            }
        }
    }

    private void writeSheets(List<Written> sheets) {
        next++;
        SXSSFRow headings = headings("Sheet", "Rows", "What they are");
        headings.getCell(1).setCellStyle(styles.headingOf(CellFormat.INTEGER));
        for (Written written : sheets) {
            SXSSFRow row = row();
            put(row, 0, written.layout().title(), styles.label());
            Cell rows = row.createCell(1);
            rows.setCellValue((double) written.rows());
            rows.setCellStyle(styles.plainNumber());
            rest(row, 2, written.layout().means());
        }
    }

    private void writeColumns(SheetLayout layout, PageRoom room) {
        List<ColumnLayout> explained =
                layout.columns().stream().filter(c -> !c.means().isEmpty()).toList();
        if (explained.isEmpty()) {
            return;
        }
        next++;
        room.keepTogether(sheet, next, explained.size() + 1);
        headings(layout.title(), "What it holds");
        explained.forEach(c -> lines(c.heading(), c.means()));
    }

    /** Headings over the whole width. */
    private SXSSFRow headings(String... words) {
        SXSSFRow row = row();
        for (int i = 0; i < WIDTHS.length; i++) {
            Cell cell = row.createCell(i);
            cell.setCellStyle(styles.oneLineHeading());
            if (i < words.length) {
                cell.setCellValue(words[i]);
            }
        }
        return row;
    }

    /** A label and its text, on as many rows as it needs. */
    private void lines(String label, String text) {
        SXSSFRow row = row();
        put(row, 0, label, styles.label());
        rest(row, 1, text);
    }

    private void rest(SXSSFRow first, int column, String text) {
        SXSSFRow row = first;
        for (String line : wrapped(text, LINE - (column - 1) * WIDTHS[1])) {
            put(row == null ? row() : row, column, line, styles.plain());
            row = null;
        }
    }

    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private SXSSFRow row() {
        return sheet.createRow(next++);
    }

    private void put(SXSSFRow row, int column, String text, CellStyle style) {
        Cell cell = row.createCell(column);
        cell.setCellValue(cells.text(text));
        cell.setCellStyle(style);
    }
}
