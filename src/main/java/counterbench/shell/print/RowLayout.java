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

    /** Side by side if that fits into the width, else one below the other. */
    static RowLayout fitting(
            PrintWriter out, int width, List<Column> columns, List<List<String>> sample) {
        int[] widths = Widths.of(columns, sample, width);
        return Widths.total(widths) <= width
                ? new SideBySide(out, columns, widths)
                : new OneBelowTheOther(out, columns, width);
    }
}
