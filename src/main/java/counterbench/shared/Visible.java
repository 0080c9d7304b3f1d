package counterbench.shared;

/** Makes text from files and scans safe to show. */
public final class Visible {
    private Visible() {}

    /** The text with control, format and lone surrogate characters written as {@code \\u001b}. */
    public static String text(String text) {
        if (text.codePoints().noneMatch(Visible::isHidden)) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 16);
        text.codePoints()
                .forEach(
                        c -> {
                            if (isHidden(c)) {
                                shown.append(String.format("\\u%04x", c));
                            } else {
                                shown.appendCodePoint(c);
                            }
                        });
        return shown.toString();
    }

    private static boolean isHidden(int c) {
        return c != '\n'
                && (Character.isISOControl(c)
                        || Character.getType(c) == Character.FORMAT
                        || Character.getType(c) == Character.SURROGATE
                        || Character.getType(c) == Character.LINE_SEPARATOR
                        || Character.getType(c) == Character.PARAGRAPH_SEPARATOR);
    }
}
