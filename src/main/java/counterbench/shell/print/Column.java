package counterbench.shell.print;

import java.util.Objects;

/**
 * One column of rows.
 *
 * @param key the word that programs rely on
 * @param number whether it holds numbers, which stand at the right
 * @param spare whether a table may leave it out where lines are too short for all columns
 */
public record Column(String key, boolean number, boolean spare) {
    public Column {
        Objects.requireNonNull(key, "key");
    }

    /** A column of words. */
    public static Column text(String key) {
        return new Column(key, false, false);
    }

    /** A column of quantities, amounts or counts. */
    public static Column number(String key) {
        return new Column(key, true, false);
    }

    /** The same, but left out of a table whose lines are too short for all columns. */
    public Column asSpare() {
        return new Column(key, number, true);
    }

    /** What stands above it in a table. */
    public String heading() {
        return key.replace('_', ' ');
    }
}
