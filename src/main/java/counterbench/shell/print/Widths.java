package counterbench.shell.print;

import java.util.List;
import java.util.stream.IntStream;

/** How wide the columns of a table are. */
final class Widths {
    /** A column of words is not made narrower than this. */
    static final int NARROWEST = 14;

    /** Nor than this, while there are spare columns to leave out instead. */
    static final int EASY = 24;

    private Widths() {}

    /**
     * As wide as the cells are, or narrower where words can be wrapped to fit the page.
     *
     * @param least how wide a column stays whose words are wrapped
     */
    static int[] of(List<Column> columns, List<List<String>> rows, int page, int least) {
        int[] natural =
                IntStream.range(0, columns.size())
                        .map(i -> natural(columns.get(i), rows, i))
                        .toArray();
        int[] widths = natural.clone();
        while (total(widths) > page) {
            int widest = widestWords(columns, widths, least);
            if (widest < 0) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private static int natural(Column column, List<List<String>> rows, int i) {
        int least = Math.max(column.least(), Cells.width(column.heading()));
        return rows.stream().mapToInt(row -> Cells.width(row.get(i))).reduce(least, Math::max);
    }

    private static int widestWords(List<Column> columns, int[] widths, int least) {
        return IntStream.range(0, widths.length)
                .filter(i -> mayWrap(columns.get(i)))
                .filter(i -> widths[i] > Math.max(least, columns.get(i).least()))
                .reduce((a, b) -> widths[b] > widths[a] ? b : a)
                .orElse(-1);
    }

    /** A spare column is rather left out than wrapped. */
    private static boolean mayWrap(Column column) {
        return !column.number() && !column.isSpare();
    }

    /** All columns and the gaps between them. */
    static int total(int[] widths) {
        return IntStream.of(widths).sum() + RowLayout.GAP.length() * Math.max(0, widths.length - 1);
    }
}
