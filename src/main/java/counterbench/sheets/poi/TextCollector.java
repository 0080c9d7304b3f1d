package counterbench.sheets.poi;

import counterbench.sheets.SheetLimits;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Collects the text of {@code t}, {@code v} and {@code f} elements, pronunciation apart. Characters
 * that XML cannot hold are written as {@code _x0007_} in workbooks and come back as they are.
 */
final class TextCollector {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private final StringBuilder text = new StringBuilder();
    private boolean collecting;
    private boolean pronunciation;

    void clear() {
        text.setLength(0);
        collecting = false;
        pronunciation = false;
    }

    void start(String element) {
        pronunciation |= element.equals("rPh");
        collecting = !pronunciation && isText(element);
    }

    void end(String element) {
        pronunciation &= !element.equals("rPh");
        collecting &= !isText(element);
    }

    private static boolean isText(String element) {
        return element.equals("t") || element.equals("v") || element.equals("f");
    }

    void add(char[] chars, int from, int length) {
        if (!collecting) {
            return;
        }
        if (text.length() + length > SheetLimits.TEXT) {
            throw new TooMuch(
                    "has a cell longer than " + SheetLimits.TEXT + " characters",
                    "shorten the cell");
        }
        text.append(chars, from, length);
    }

    /** What was collected since the last {@link #clear}, as the file has it. */
    String raw() {
        return text.toString();
    }

    /** What was collected, with escaped characters as they are. */
    String text() {
        if (text.indexOf("_x") < 0) {
            return text.toString();
        }
        Matcher escaped = ESCAPED.matcher(text);
        return escaped.replaceAll(
                m -> Matcher.quoteReplacement("" + (char) Integer.parseInt(m.group(1), 16)));
    }
}
