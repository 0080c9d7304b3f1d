package counterbench.sheets;

/**
 * Spreadsheets run text that begins with {@code = + - @}, a tab or a carriage return as a formula,
 * quoted or not (CWE-1236; OWASP ASVS 1.2.10). Our own {@code .csv} files put an apostrophe before
 * such text, and it is taken off again when they are read.
 */
public final class CsvGuard {
    private static final String STARTS = "=+-@\t\r";

    private CsvGuard() {}

    /** The text, guarded if it needs it. Numbers are not text and need no guard. */
    public static String guarded(String text) {
        return runs(text) ? "'" + text : text;
    }

    /** The text without the guard. */
    static String unguarded(String text) {
        return text.startsWith("'") && runs(text) ? text.substring(1) : text;
    }

    /** Whether it would run, or looks like text that is guarded already. */
    private static boolean runs(String text) {
        int at = 0;
        while (at < text.length() && text.charAt(at) == '\'') {
            at++;
        }
        return at < text.length() && STARTS.indexOf(text.charAt(at)) >= 0;
    }
}
