package counterbench.shell.print;

/** How rows are written. */
public enum Format {
    /** For people. */
    TABLE,
    /** One object with {@code rows}; every value a text or null. */
    JSON,
    /** RFC 4180, with a heading. */
    CSV
}
