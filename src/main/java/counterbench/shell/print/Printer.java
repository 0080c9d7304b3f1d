package counterbench.shell.print;

import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chooses how rows are written.
 *
 * @param screen whether a person looks at them on a terminal
 * @param width how many characters fit into a line
 * @param pause called between rows; throws where the person asked to stop
 */
public record Printer(PrintWriter out, boolean screen, int width, Runnable pause) {
    /** Rows of these columns in a format. */
    public Rows rows(Format format, List<Column> columns) {
        Rows rows =
                switch (format) {
                    case TABLE -> new TableRows(out, width, columns);
                    case JSON -> new JsonRows(out, columns);
                    case CSV -> new CsvRows(out, columns, screen);
                };
        return new Checked(rows, columns.size(), pause);
    }

    /** Refuses rows of another length, and stops when asked. */
    private record Checked(Rows rows, int columns, Runnable pause) implements Rows {
        @Override
        public void add(@Nullable Object... cells) {
            if (cells.length != columns) {
                throw new IllegalArgumentException(
                        cells.length + " cells for " + columns + " columns");
            }
            pause.run();
            rows.add(cells);
        }

        @Override
        public void section(String title, String... keys) {
            rows.section(title, keys);
        }

        @Override
        public void close() {
            rows.close();
        }
    }
}
