package counterbench.sheets;

import java.util.List;

/**
 * Writes a file of rows, one sheet after the other, as they come. Closing it without {@link
 * #finish} leaves no file behind.
 */
public interface SheetWriter extends AutoCloseable {
    /** Begins a sheet. */
    void sheet(String name);

    /** Adds a row at its number; cells are written as they were read. */
    void row(int number, List<Cell> cells);

    /** Completes the file. */
    void finish();

    @Override
    void close();
}
