package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A table of plain characters. The first rows are held to measure the columns, the rest is written
 * as it comes. What does not fit beside each other even with wrapped cells is written one cell a
 * line.
 */
final class TableRows implements Rows {
    /** Rows that are measured before the first is written. */
    private static final int MEASURED = 500;

    private final PrintWriter out;
    private final int width;
    private final List<Column> columns;
    private final List<List<String>> held = new ArrayList<>();
    private int[] shown;
    private boolean first = true;
    private @Nullable RowLayout layout;

    TableRows(PrintWriter out, int width, List<Column> columns) {
        this.out = out;
        this.width = width;
        this.columns = columns;
        this.shown = IntStream.range(0, columns.size()).toArray();
    }

    @Override
    public void add(@Nullable Object... cells) {
        List<String> row = new ArrayList<>();
        for (int i : shown) {
            row.add(Cells.text(cells[i]));
        }
        if (layout != null) {
            layout.row(row);
        } else if (held.size() < MEASURED) {
            held.add(row);
        } else {
            laidOut().row(row);
        }
    }

    @Override
    public void section(String title, String... keys) {
        if (!first) {
            endTable();
            out.println();
        }
        first = false;
        out.println(Cells.text(title));
        out.println();
        List<String> wanted = List.of(keys);
        shown =
                IntStream.range(0, columns.size())
                        .filter(i -> wanted.contains(columns.get(i).key()))
                        .toArray();
    }

    private RowLayout laidOut() {
        List<Column> chosen = IntStream.of(shown).mapToObj(columns::get).toList();
        RowLayout laid = RowLayout.fitting(out, width, chosen, held);
        laid.heading();
        held.forEach(laid::row);
        held.clear();
        layout = laid;
        return laid;
    }

    private void endTable() {
        if (layout == null && held.isEmpty()) {
            out.println("none");
        } else if (layout == null) {
            laidOut();
        }
        if (layout != null && !layout.leftOut().isEmpty()) {
            Paragraph.lines(leftOut(layout.leftOut()), width).forEach(out::println);
        }
        layout = null;
    }

    private static String leftOut(List<Column> columns) {
        return columns.stream()
                .map(Column::heading)
                .collect(
                        Collectors.joining(
                                ", ", "(no room for ", "; a wider window shows all columns)"));
    }

    @Override
    public void close() {
        endTable();
        out.flush();
    }
}
