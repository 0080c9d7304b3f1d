package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.IntStream;

/** A row's cells beside each other; words that do not fit go on below. */
final class SideBySide implements RowLayout {
    private final PrintWriter out;
    private final List<Column> columns;
    private final int[] widths;

    SideBySide(PrintWriter out, List<Column> columns, int[] widths) {
        this.out = out;
        this.columns = columns;
        this.widths = widths;
    }

    @Override
    public void heading() {
        row(columns.stream().map(Column::heading).toList());
        line(IntStream.of(widths).mapToObj("-"::repeat).toList());
    }

    @Override
    public void row(List<String> cells) {
        List<List<String>> wrapped =
                IntStream.range(0, cells.size())
                        .mapToObj(i -> Cells.wrapped(cells.get(i), widths[i]))
                        .toList();
        int lines = wrapped.stream().mapToInt(List::size).max().orElse(0);
        for (int n = 0; n < lines; n++) {
            int at = n;
            line(wrapped.stream().map(cell -> at < cell.size() ? cell.get(at) : "").toList());
        }
    }

    private void line(List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String fill = " ".repeat(Math.max(0, widths[i] - Cells.width(cells.get(i))));
            line.append(i == 0 ? "" : GAP)
                    .append(columns.get(i).number() ? fill + cells.get(i) : cells.get(i) + fill);
        }
        out.println(line.toString().stripTrailing());
    }
}
