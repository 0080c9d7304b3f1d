package counterbench.care.store;

import org.jspecify.annotations.Nullable;

/**
 * How a table lies in a backup: a CSV file (RFC 4180, UTF-8) with a heading. No value is written as
 * {@code \N}, and a text that begins with a backslash gets another one before it.
 */
final class TableFile {
    private static final String NOTHING = "\\N";

    private TableFile() {}

    /** The name of a table's file. */
    static String nameOf(String table) {
        return "tables/" + table + ".csv";
    }

    static String written(@Nullable String value) {
        if (value == null) {
            return NOTHING;
        }
        return value.startsWith("\\") ? "\\" + value : value;
    }

    static @Nullable String read(String cell) {
        if (cell.equals(NOTHING)) {
            return null;
        }
        return cell.startsWith("\\") ? cell.substring(1) : cell;
    }
}
