package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import java.util.Arrays;
import java.util.List;

/** Measures columns by their headings and first rows, in characters. */
final class Widths {
    private static final int MEASURED_ROWS = StreamedWorkbook.ROWS_IN_MEMORY - 10;
    private static final int WIDEST = 60;
    private static final int MARGIN = 2;

    /** Percent that capitals are wider than digits, and that marks between thousands need. */
    private static final int CAPITALS = 15;

    private static final int THOUSANDS = 33;
    private static final int FILTER_BUTTON = 4;

    /** Room for the words and the sums of a chart's table. */
    private static final int CHART_WORDS = 20;

    private static final int CHART_SUMS = 12;

    private final List<ColumnLayout> columns;
    private final int chartSums;
    private final int[] longest;
    private int rows;

    /**
     * @param chartSums columns of sums of the charts whose tables stand below the rows; 0 where
     *     there is none
     */
    Widths(SheetLayout layout, int chartSums) {
        this.columns = layout.columns();
        this.chartSums = chartSums;
        this.longest = new int[columns.size()];
    }

    /** Whether the first rows are still being measured. */
    boolean isMeasuring() {
        return rows < MEASURED_ROWS;
    }

    void measure(int column, String text) {
        longest[column] = Math.max(longest[column], text.length());
    }

    void endRow() {
        rows++;
    }

    /** Whether a heading needs a second line. */
    boolean isAnyHeadingWrapped() {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).heading().length() + FILTER_BUTTON > of(i)) {
                return true;
            }
        }
        return false;
    }

    /** How many lines a text takes in a column, at a guess that is rather too many. */
    int lines(int column, String text) {
        int fit = Math.max(1, of(column) * 100 / (100 + CAPITALS));
        return text.lines().mapToInt(l -> Math.max(1, (l.length() + fit - 1) / fit)).sum();
    }

    /** The width of a column. */
    int of(int column) {
        return Math.max(ofRows(column), ofCharts(column));
    }

    private int ofCharts(int column) {
        if (chartSums == 0 || column > chartSums) {
            return 0;
        }
        return column == 0 ? CHART_WORDS : CHART_SUMS;
    }

    private int ofRows(int column) {
        ColumnLayout layout = columns.get(column);
        if (layout.width() > 0) {
            return layout.width();
        }
        int words =
                Arrays.stream(layout.heading().split(" ")).mapToInt(String::length).max().orElse(0);
        if (layout.format() == CellFormat.NOTE) {
            return layout.format().usualWidth();
        }
        int heading = Math.max(words, (layout.heading().length() + 1) / 2) + FILTER_BUTTON;
        int room = layout.format().isNumber() ? THOUSANDS : CAPITALS;
        int said = longest[column] * (100 + room) / 100;
        int usual = layout.format() == CellFormat.TEXT ? 0 : layout.format().usualWidth();
        return Math.min(WIDEST, Math.max(Math.max(usual, heading), said + MARGIN));
    }
}
