package counterbench.shell.print;

import counterbench.shared.Interrupted;
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
        return new Checked(rows, columns.size(), pause, out);
    }

    /** Refuses rows of another length, and stops when asked or when nobody reads any more. */
    private static final class Checked implements Rows {
        private static final int LOOKS_EVERY = 4096;

        private final Rows rows;
        private final int columns;
        private final Runnable pause;
        private final PrintWriter out;
        private int written;

        Checked(Rows rows, int columns, Runnable pause, PrintWriter out) {
            this.rows = rows;
            this.columns = columns;
            this.pause = pause;
            this.out = out;
        }

        @Override
        public void add(@Nullable Object... cells) {
            if (cells.length != columns) {
                throw new IllegalArgumentException(
                        cells.length + " cells for " + columns + " columns");
            }
            pause.run();
            rows.add(cells);
            written++;
            if (written % LOOKS_EVERY == 0 && out.checkError()) {
                throw new Interrupted();
            }
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
