package counterbench.sheets;

import counterbench.shared.Visible;

/** Text of cells: what counts as space at its ends, and how it is shown in messages. */
final class Text {
    private static final int SHOWN = 60;

    private Text() {}

    /** The text without the spaces around it, no-break spaces among them. */
    static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** Whether the text holds a character that cannot be seen, or a line break. */
    static boolean hidesSomething(String text) {
        return text.indexOf('\n') >= 0 || !Visible.text(text).equals(text);
    }

    /** The text in quotation marks, not too long, and with nothing hidden in it. */
    static String quoted(String text) {
        String cut = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
        return '"' + Visible.text(cut).replace("\n", "\\n") + '"';
    }
}
