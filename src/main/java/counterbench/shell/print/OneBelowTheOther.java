package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.List;

/** A cell a line behind its heading, for pages too narrow for the row; empty cells are left out. */
final class OneBelowTheOther implements RowLayout {
    private final PrintWriter out;
    private final List<Column> columns;
    private final int headings;
    private final int rest;
    private boolean first = true;

    OneBelowTheOther(PrintWriter out, List<Column> columns, int width) {
        this.out = out;
        this.columns = columns;
        this.headings = columns.stream().mapToInt(c -> Cells.width(c.heading())).max().orElse(0);
        this.rest = Math.max(20, width - headings - GAP.length());
    }

    @Override
    public void heading() {}

    @Override
    public void row(List<String> cells) {
        if (!first) {
            out.println();
        }
        first = false;
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                cell(columns.get(i).heading(), Cells.wrapped(cells.get(i), rest));
            }
        }
    }

    private void cell(String heading, List<String> lines) {
        String before = heading + " ".repeat(headings - Cells.width(heading));
        for (String line : lines) {
            out.println(before + GAP + line);
            before = " ".repeat(headings);
        }
    }
}
