package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.List;

/** How the rows of a table lie on the page. */
interface RowLayout {
    /** Between two columns. */
    String GAP = "  ";

    /** Writes the headings. */
    void heading();

    /** Writes a row. */
    void row(List<String> cells);

    /** What is not shown for lack of room. */
    default List<Column> leftOut() {
        return List.of();
    }

    /**
     * Side by side if that fits into the width, perhaps without spare columns, else one below the
     * other.
     */
    static RowLayout fitting(
            PrintWriter out, int width, List<Column> columns, List<List<String>> sample) {
        List<List<Integer>> choices = Fewer.of(columns, sample);
        for (List<Integer> kept : choices) {
            List<Column> some = Fewer.pick(columns, kept);
            List<List<String>> rows = sample.stream().map(row -> Fewer.pick(row, kept)).toList();
            boolean isLast = kept.equals(choices.get(choices.size() - 1));
            int[] widths = Widths.of(some, rows, width, isLast ? Widths.NARROWEST : Widths.EASY);
            if (Widths.total(widths) <= width) {
                return new Fewer(columns, kept, new SideBySide(out, some, widths));
            }
        }
        return new OneBelowTheOther(out, columns, width);
    }
}
