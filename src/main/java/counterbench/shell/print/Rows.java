package counterbench.shell.print;

import org.jspecify.annotations.Nullable;

/** Takes rows and writes them as they come. */
public interface Rows extends AutoCloseable {
    /** A blank at which a table breaks no cell, and which it writes as any other. */
    char UNBROKEN = '\u00a0';

    /**
     * Writes a row.
     *
     * @param cells one for each column, in their order; each is written as its own text, and a
     *     missing one as nothing (null in JSON)
     */
    void add(@Nullable Object... cells);

    /**
     * In a table, goes on with a new one of these columns only; programs get the same rows as
     * before.
     *
     * @param title what stands above it
     * @param keys the columns to show
     */
    default void section(String title, String... keys) {}

    /** Writes what is still held. */
    @Override
    void close();
}
