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
    private static final float LINE_HEIGHT = 13;

    private static final String NONE = "none";
    private static final float MARGIN = 2;
    private static final float MOST_HEIGHT = 400;

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
        this.widths = new Widths(layout, chartSums());
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
            totals.write(page.createRow(next++));
        }
        place(charts);
        fitHeadings();
        pages.forEach(this::setWidths);
        return rows;
    }

    private void write(Map<String, ? extends @Nullable Object> row, List<ChartData> gathering) {
        if (!layout.fields().containsAll(row.keySet())) {
            throw new IllegalArgumentException(
                    layout.sheet() + " has not all fields of " + row.keySet());
        }
        if (next >= mostRows - (layout.hasTotals() ? 1 : 0)) {
            endPage();
            page = begin();
        }
        SXSSFRow to = page.createRow(next++);
        for (int i = 0; i < layout.columns().size(); i++) {
            ColumnLayout column = layout.columns().get(i);
            Object value = row.get(column.field());
            write(to.createCell(i), column, i, value);
            totals.add(i, value);
        }
        fitHeight(to);
        rows++;
        widths.endRow();
        if (!widths.isMeasuring()) {
            fitHeadings();
        }
        gathering.forEach(chart -> chart.add(row));
    }

    private void write(Cell cell, ColumnLayout column, int i, @Nullable Object value) {
        cells.write(cell, column.format(), value);
        if (value != null && widths.isMeasuring() && !column.format().isTime()) {
            widths.measure(i, cells.text(value));
        }
    }

    /** Gives a row with long texts the height that they need; programs do not do so themselves. */
    private void fitHeight(SXSSFRow row) {
        int lines = 1;
        for (int i = 0; i < layout.columns().size(); i++) {
            if (layout.columns().get(i).format() == CellFormat.NOTE) {
                lines = Math.max(lines, widths.lines(i, row.getCell(i).getStringCellValue()));
            }
        }
        if (lines > 1) {
            row.setHeightInPoints(Math.min(MOST_HEIGHT, lines * LINE_HEIGHT + MARGIN));
        }
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
        sheet.setDefaultRowHeightInPoints(LINE_HEIGHT + MARGIN);
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

    private void place(List<ChartData> charts) {
        for (ChartData chart : charts) {
            if (chart.layout().place().equals(layout.sheet())) {
                String heading = headingOf(chart);
                ChartBlock block = new ChartBlock(workbook, styles, report, chart);
                next = block.write(page, next + 2, widths(), heading);
            }
        }
    }

    private String headingOf(ChartData chart) {
        return report.layout()
                .sheet(chart.layout().of())
                .map(chart.layout()::heading)
                .orElse(chart.layout().of());
    }

    private int chartSums() {
        return report.layout().charts().stream()
                .filter(chart -> chart.place().equals(layout.sheet()))
                .mapToInt(chart -> chart.series().size())
                .max()
                .orElse(0);
    }

    private int[] widths() {
        int[] all = new int[layout.columns().size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = widths.of(i);
        }
        return all;
    }

    private void setWidths(SXSSFSheet sheet) {
        int[] all = widths();
        for (int i = 0; i < all.length; i++) {
            sheet.setColumnWidth(i, all[i] * 256);
        }
    }
}
