package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import java.math.BigDecimal;
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

    /** Percent of a digit's width that a letter takes, by what it is. */
    private static final int CAPITAL = 120;

    private static final int IDEOGRAPH = 200;
    private static final int SMALL = 95;
    private static final int MARK = 60;
    private static final int OTHER = 100;
    private static final String MARKS = " .,:;'-()";
    private static final int FIRST_IDEOGRAPH = 0x2E80;

    /** Percent of their usual width that whole lines take in bold letters. */
    private static final int BOLD = 118;

    /** Percent more that marks between thousands take. */
    private static final int THOUSANDS = 33;

    /** The point and the places of money or percent, and the latter's sign. */
    private static final int PLACES = 3;

    private static final int FILTER_BUTTON = 4;

    /** Words of more letters take the room of one letter more where they are bold. */
    private static final int LONG_IN_BOLD = 6;

    private final List<ColumnLayout> columns;
    private final int[] longest;
    private final int[] inCharts;

    Widths(SheetLayout layout) {
        this.columns = layout.columns();
        this.longest = new int[columns.size()];
        this.inCharts = new int[columns.size()];
    }

    /** Makes room for a text in a column. */
    void measure(int column, String text) {
        longest[column] = Math.max(longest[column], digits(text) + MARGIN);
    }

    /** Makes room for a number in a column. */
    void measure(int column, BigDecimal number) {
        CellFormat format = columns.get(column).format();
        longest[column] = Math.max(longest[column], number(format, number));
    }

    /** Makes room for a text in a chart's table, which stands below the rows. */
    void measureInChart(int column, String text) {
        measureInChart(column, Math.min(WIDEST_TEXT, digits(text) + MARGIN));
    }

    /** Makes room for a number in a chart's table. */
    void measureInChart(int column, CellFormat format, BigDecimal number) {
        measureInChart(column, number(format, number));
    }

    private void measureInChart(int column, int width) {
        if (column < inCharts.length) {
            inCharts[column] = Math.max(inCharts[column], width);
        }
    }

    /** Quantities stand as they are; others have places, and marks between thousands. */
    private static int number(CellFormat format, BigDecimal number) {
        String plain = number.stripTrailingZeros().toPlainString();
        if (format == CellFormat.QUANTITY) {
            return plain.length() + MARGIN;
        }
        int point = plain.indexOf('.');
        int whole = point < 0 ? plain.length() : point;
        int places = format == CellFormat.INTEGER ? 0 : PLACES;
        return whole * (OTHER + THOUSANDS) / OTHER + places + MARGIN;
    }

    /** As many digits as a text is wide; rather too many. */
    private static int digits(String text) {
        int percent = text.codePoints().map(Widths::percent).sum();
        return (percent + OTHER - 1) / OTHER;
    }

    private static int percent(int letter) {
        if (letter >= FIRST_IDEOGRAPH) {
            return IDEOGRAPH;
        }
        if (MARKS.indexOf(letter) >= 0) {
            return MARK;
        }
        if (Character.isLowerCase(letter)) {
            return SMALL;
        }
        return Character.isUpperCase(letter) ? CAPITAL : OTHER;
    }

    /** Whether a line in bold letters ends within so many characters. */
    static boolean fitsInBold(String text, int width) {
        return digits(text) * BOLD <= (width - MARGIN) * OTHER;
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
        int fit = Math.max(1, width - MARGIN);
        return digits(text) <= fit && text.indexOf('\n') < 0
                ? 1
                : text.lines().mapToInt(line -> broken(line, fit)).sum();
    }

    /** Lines are broken between words, and within those that are longer than a line. */
    private static int broken(String text, int fit) {
        int lines = 1;
        int used = 0;
        for (String word : text.strip().split(" +", -1)) {
            int wide = digits(word);
            int with = used == 0 ? wide : used + 1 + wide;
            if (with <= fit) {
                used = with;
            } else {
                lines += (used == 0 ? 0 : 1) + (wide - 1) / fit;
                used = (wide - 1) % fit + 1;
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

    private int ofRows(int column) {
        ColumnLayout layout = columns.get(column);
        if (layout.width() > 0) {
            return layout.width();
        }
        if (layout.format() == CellFormat.NOTE) {
            return layout.format().usualWidth();
        }
        int usual = layout.format() == CellFormat.TEXT ? 0 : layout.format().usualWidth();
        int needed = Math.max(Math.max(usual, heading(layout.heading())), longest[column]);
        return Math.min(widest(layout.format()), needed);
    }

    /** Room for a heading on two lines, of which no word is broken; a button narrows both. */
    private static int heading(String heading) {
        int word = Arrays.stream(heading.split(" ")).mapToInt(Widths::bold).max().orElse(0);
        return Math.max(word, (heading.length() + 1) / 2) + FILTER_BUTTON;
    }

    /** As many digits as a word in bold letters is wide; rather too many. */
    private static int bold(String word) {
        return digits(word) + (word.length() > LONG_IN_BOLD ? 1 : 0);
    }
}
