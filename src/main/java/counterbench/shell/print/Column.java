package counterbench.shell.print;

import java.util.Objects;

/**
 * One column of rows.
 *
 * @param key the word that programs rely on
 * @param number whether it holds numbers, which stand at the right
 */
public record Column(String key, boolean number) {
    public Column {
        Objects.requireNonNull(key, "key");
    }

    /** A column of words. */
    public static Column text(String key) {
        return new Column(key, false);
    }

    /** A column of quantities, amounts or counts. */
    public static Column number(String key) {
        return new Column(key, true);
    }

    /** What stands above it in a table. */
    public String heading() {
        return key.replace('_', ' ');
    }
}
