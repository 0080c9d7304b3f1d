package counterbench.sheets.poi;

import counterbench.sheets.report.ReportLayout.Paper;
import java.util.Arrays;

/**
 * How the columns of a sheet lie on paper. They stand side by side on one page as long as letters
 * are large enough to be read; else on several, each of which begins with the first column.
 *
 * @param across how many pages lie side by side
 * @param scale what sizes are multiplied with in print, at a guess
 * @param height how much of the sheet's rows one page takes, in points
 */
record PrintedPage(int across, double scale, double height) {
    static final double SIDE = 0.35;
    static final double TOP = 0.8;
    static final double BOTTOM = 0.7;

    /**
     * The least size of letters in print, in points; a little more than must be, since other fonts,
     * where the usual one is not there, are wider.
     */
    private static final double LEAST_SIZE = 6.5;

    private static final int MOST_ACROSS = 4;
    private static final double POINTS = 72;

    /** How many digits of the usual font, at its size, are an inch wide: 96 pixels by 7. */
    private static final double DIGITS = 96 / 7.0;

    /** What of a page's width columns fill, which are not broken. */
    private static final double FILLED = 0.92;

    /**
     * @param lying whether the paper lies on its long side
     * @param widths of the columns, in characters
     */
    static PrintedPage of(Paper paper, boolean lying, int[] widths) {
        int across = 1;
        while (across < MOST_ACROSS
                && scale(paper, lying, widths, across) * Styles.SIZE < LEAST_SIZE) {
            across++;
        }
        double scale = scale(paper, lying, widths, across);
        return new PrintedPage(
                across, scale, (paper.height(lying) - (TOP + BOTTOM) * POINTS) / scale);
    }

    private static double scale(Paper paper, boolean lying, int[] widths, int across) {
        double characters = Arrays.stream(widths).sum() + (across - 1.0) * widths[0];
        double room = (paper.width(lying) / POINTS - 2 * SIDE) * DIGITS * across;
        return Math.min(1, room * (across == 1 ? 1 : FILLED) / characters);
    }
}
