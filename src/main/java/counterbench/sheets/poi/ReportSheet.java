package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportRows;
import counterbench.sheets.report.SheetLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.jspecify.annotations.Nullable;

/** Writes one sheet of a report, on as many pages of the workbook as its rows need. */
final class ReportSheet {
    /** The height of a row of one line, in points. */
    static final float ROW_HEIGHT = 15;

    private static final float LINE_HEIGHT = 13;
    private static final float MARGIN = 2;
    private static final float MOST_HEIGHT = 400;

    /** After how many rows the heights of headings must be known. */
    private static final int FIRST_ROWS = StreamedWorkbook.ROWS_IN_MEMORY - 10;

    /** Rows that stay empty before a chart and its table. */
    private static final int GAP = 2;

    private static final String NONE = "none";

    private final StreamedWorkbook workbook;
    private final Styles styles;
    private final Report report;
    private final SheetLayout layout;
    private final int mostRows;
    private final CellWriter cells;
    private final Widths widths;
    private final Totals totals;
    private final List<SXSSFSheet> pages = new ArrayList<>();
    private final List<SXSSFRow> headings = new ArrayList<>();
    private SXSSFSheet page;
    private int next;
    private long rows;
    private double height;

    ReportSheet(
            StreamedWorkbook workbook,
            Styles styles,
            Report report,
            SheetLayout layout,
            int mostRows) {
        this.workbook = workbook;
        this.styles = styles;
        this.report = report;
        this.layout = layout;
        this.mostRows = mostRows;
        this.cells = new CellWriter(styles, report.zone());
        this.widths = new Widths(layout);
        this.totals = new Totals(layout, styles);
        this.page = begin();
    }

    /** Writes every row, then totals, then the charts that are placed here; says how many rows. */
    long write(List<ChartData> charts) {
        List<ChartData> gathering =
                charts.stream().filter(c -> c.layout().of().equals(layout.sheet())).toList();
        ReportRows source = report.rows().get(layout.sheet());
        if (source != null) {
            source.each(row -> write(row, gathering));
        }
        endPage();
        if (rows == 0) {
            cells.write(page.createRow(next++).createCell(0), CellFormat.TEXT, NONE);
        } else if (layout.hasTotals()) {
            totals.measure(widths);
            totals.write(page.createRow(next++));
            height += totals.mostRows() * (double) ROW_HEIGHT;
            if (totals.isAnyApart()) {
                totals.writeApart(page.createRow(next++), widths.of(0));
            }
        }
        List<ChartBlock> blocks = blocks(charts);
        blocks.forEach(block -> block.measure(widths));
        fitHeadings();
        PrintedPage printed = PrintedPage.of(report.layout().paper(), true, widths.all());
        place(blocks, printed);
        pages.forEach(sheet -> finish(sheet, printed));
        return rows;
    }

    /** How high a row of so many lines is, in points. */
    static float height(int lines) {
        return Math.min(MOST_HEIGHT, lines * LINE_HEIGHT + MARGIN);
    }

    private void write(Map<String, ? extends @Nullable Object> row, List<ChartData> gathering) {
        if (!layout.fields().containsAll(row.keySet())) {
            throw new IllegalArgumentException(
                    layout.sheet() + " has not all fields of " + row.keySet());
        }
        if (next >= mostRows - (layout.hasTotals() ? totals.mostRows() : 0)) {
            endPage();
            page = begin();
        }
        SXSSFRow to = page.createRow(next++);
        int lines = 1;
        for (int i = 0; i < layout.columns().size(); i++) {
            lines = Math.max(lines, write(to.createCell(i), i, row));
        }
        totals.add(row);
        fitHeight(to, lines);
        rows++;
        if (rows >= FIRST_ROWS) {
            fitHeadings();
        }
        gathering.forEach(chart -> chart.add(row));
    }

    /** Writes a cell; says how many lines it takes. */
    private int write(Cell cell, int i, Map<String, ? extends @Nullable Object> row) {
        Object value = row.get(layout.columns().get(i).field());
        CellFormat format = layout.columns().get(i).format();
        cells.write(cell, format, value);
        if (value == null || format.isTime()) {
            return 1;
        }
        if (format.isNumber()) {
            widths.measure(i, CellWriter.number(value));
            return 1;
        }
        String text = cell.getStringCellValue();
        widths.measure(i, text);
        int lines = widths.lines(i, text);
        if (lines > 1) {
            cells.write(cell, CellFormat.NOTE, value);
        }
        return lines;
    }

    /** Gives a row with long texts the height that they need; programs do not do so themselves. */
    private void fitHeight(SXSSFRow row, int lines) {
        if (lines > 1) {
            row.setHeightInPoints(height(lines));
        }
        height += height(lines);
    }

    /** Gives headings a second line where one of them needs it, once the widths are known. */
    private void fitHeadings() {
        int lines = widths.isAnyHeadingWrapped() ? 2 : 1;
        headings.forEach(row -> row.setHeightInPoints(lines * LINE_HEIGHT + 2 * MARGIN));
        headings.clear();
    }

    private SXSSFSheet begin() {
        String number = pages.isEmpty() ? "" : " (" + (pages.size() + 1) + ")";
        SXSSFSheet sheet = workbook.createSheet(layout.title() + number);
        pages.add(sheet);
        SXSSFRow row = sheet.createRow(0);
        headings.add(row);
        for (int i = 0; i < layout.columns().size(); i++) {
            ColumnLayout column = layout.columns().get(i);
            Cell cell = row.createCell(i);
            cell.setCellValue(column.heading());
            cell.setCellStyle(styles.headingOf(column.format()));
        }
        sheet.setDefaultRowHeightInPoints(ROW_HEIGHT);
        height = 2 * ROW_HEIGHT;
        sheet.createFreezePane(0, 1);
        PrintSetup.apply(sheet, report, true);
        PrintSetup.repeatHeadings(sheet);
        next = 1;
        return sheet;
    }

    private void endPage() {
        int last = Math.max(0, next - 1);
        page.setAutoFilter(new CellRangeAddress(0, last, 0, layout.columns().size() - 1));
        totals.endPage(page.getSheetName(), last);
    }

    private List<ChartBlock> blocks(List<ChartData> charts) {
        return charts.stream()
                .filter(chart -> chart.layout().place().equals(layout.sheet()))
                .map(chart -> new ChartBlock(workbook, styles, report, chart))
                .filter(block -> !block.isEmpty())
                .toList();
    }

    private void place(List<ChartBlock> blocks, PrintedPage printed) {
        PageRoom room = new PageRoom(printed, height, next);
        for (ChartBlock block : blocks) {
            next += GAP;
            room.keepTogether(page, next, block.rows());
            next = block.write(page, next, widths.all());
        }
    }

    private void finish(SXSSFSheet sheet, PrintedPage printed) {
        int[] all = widths.all();
        for (int i = 0; i < all.length; i++) {
            sheet.setColumnWidth(i, all[i] * 256);
        }
        PrintSetup.spread(sheet, printed);
    }
}
