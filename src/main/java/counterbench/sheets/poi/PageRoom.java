package counterbench.sheets.poi;

import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * Keeps what belongs together on one printed page. That a break stands where pages are fitted to
 * the paper's width is common practice of the programs that print them.
 */
final class PageRoom {
    private final double height;
    private double used;
    private int from;

    /**
     * @param used what stands before a row, in points
     * @param from that row; those after it are of the usual height
     */
    PageRoom(PrintedPage page, double used, int from) {
        this.height = page.height();
        this.used = used;
        this.from = from;
    }

    /** Begins a new page with a row where so many rows would not have room any more. */
    void keepTogether(SXSSFSheet sheet, int row, int rows) {
        if (used + (row - from + rows) * ReportSheet.ROW_HEIGHT > height) {
            sheet.setRowBreak(row - 1);
            used = 0;
            from = row;
        }
    }
}
