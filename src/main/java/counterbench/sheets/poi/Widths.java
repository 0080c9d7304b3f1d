package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Measures columns by their headings and all that is written into them, in characters. A text that
 * is longer than its column may become goes on in a second line.
 */
final class Widths {
    /** How wide a column of texts, and one of numbers, becomes by itself. */
    private static final int WIDEST_TEXT = 36;

    private static final int WIDEST = 60;
    private static final int MARGIN = 2;

    /** Percent that capitals are wider than digits, and that marks between thousands need. */
    private static final int CAPITALS = 15;

    private static final int THOUSANDS = 33;
    private static final int FILTER_BUTTON = 4;

    private final List<ColumnLayout> columns;
    private final int[] longest;
    private final int[] inCharts;

    Widths(SheetLayout layout) {
        this.columns = layout.columns();
        this.longest = new int[columns.size()];
        this.inCharts = new int[columns.size()];
    }

    /** Makes room for a cell of a column. */
    void measure(int column, int length) {
        longest[column] = Math.max(longest[column], length);
    }

    /** Makes room for a cell of a chart's table, which stands below the rows. */
    void measureInChart(int column, int length, boolean number) {
        if (column < inCharts.length) {
            int needed = needed(length, number);
            inCharts[column] = Math.max(inCharts[column], Math.min(WIDEST_TEXT, needed));
        }
    }

    /** Whether a heading needs a second line. */
    boolean isAnyHeadingWrapped() {
        return IntStream.range(0, columns.size())
                .anyMatch(i -> columns.get(i).heading().length() + FILTER_BUTTON > of(i));
    }

    /** How many lines a text takes in a column of texts, at a guess that is rather too many. */
    int lines(int column, String text) {
        ColumnLayout layout = columns.get(column);
        return lines(text, layout.width() > 0 ? layout.width() : widest(layout.format()));
    }

    /** How many lines a text takes in so many characters. */
    static int lines(String text, int width) {
        int fit = Math.max(1, (width - MARGIN) * 100 / (100 + CAPITALS));
        return text.length() <= fit && text.indexOf('\n') < 0
                ? 1
                : text.lines().mapToInt(line -> broken(line, fit)).sum();
    }

    /** Lines are broken between words, and within those that are longer than a line. */
    private static int broken(String text, int fit) {
        int lines = 1;
        int used = 0;
        for (String word : text.strip().split(" +", -1)) {
            int with = used == 0 ? word.length() : used + 1 + word.length();
            if (with <= fit) {
                used = with;
            } else {
                lines += (used == 0 ? 0 : 1) + (word.length() - 1) / fit;
                used = (word.length() - 1) % fit + 1;
            }
        }
        return lines;
    }

    /** The width of a column. */
    int of(int column) {
        return Math.max(ofRows(column), inCharts[column]);
    }

    /** The widths of all columns. */
    int[] all() {
        return IntStream.range(0, columns.size()).map(this::of).toArray();
    }

    private static int widest(CellFormat format) {
        if (format == CellFormat.NOTE) {
            return format.usualWidth();
        }
        return format == CellFormat.TEXT ? WIDEST_TEXT : WIDEST;
    }

    private static int needed(int length, boolean number) {
        return length * (100 + (number ? THOUSANDS : CAPITALS)) / 100 + MARGIN;
    }

    private int ofRows(int column) {
        ColumnLayout layout = columns.get(column);
        if (layout.width() > 0) {
            return layout.width();
        }
        if (layout.format() == CellFormat.NOTE) {
            return layout.format().usualWidth();
        }
        int words =
                Arrays.stream(layout.heading().split(" ")).mapToInt(String::length).max().orElse(0);
        int heading = Math.max(words, (layout.heading().length() + 1) / 2) + FILTER_BUTTON;
        int usual = layout.format() == CellFormat.TEXT ? 0 : layout.format().usualWidth();
        int said = needed(longest[column], layout.format().isNumber());
        return Math.min(widest(layout.format()), Math.max(Math.max(usual, heading), said));
    }
}
