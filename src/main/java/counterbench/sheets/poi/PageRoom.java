package counterbench.sheets.poi;

import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * Keeps what belongs together on one printed page. That a break stands where pages are fitted to
 * the paper's width is common practice of the programs that print them.
 */
final class PageRoom {
    private final double height;
    private double used;

    /**
     * @param used what stands before, in points
     */
    PageRoom(PrintedPage page, double used) {
        this.height = page.height();
        this.used = used;
    }

    /** Begins a new page with a row where so much would not have room any more. */
    void keepTogether(SXSSFSheet sheet, int row, double points) {
        if (used + points > height) {
            sheet.setRowBreak(row - 1);
            used = 0;
        }
        used += points;
    }
}
