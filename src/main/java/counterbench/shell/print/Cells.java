package counterbench.shell.print;

import counterbench.shared.Visible;
import java.util.ArrayList;
import java.util.List;
import org.jline.utils.WCWidth;
import org.jspecify.annotations.Nullable;

/** The text of table cells. */
final class Cells {
    private Cells() {}

    /** A cell in one line, with hidden characters shown. */
    static String text(@Nullable Object cell) {
        return cell == null ? "" : Visible.text(cell.toString().replace('\n', ' '));
    }

    /** How many places the text takes on a terminal. */
    static int width(String text) {
        return text.codePoints().map(Cells::width).sum();
    }

    private static int width(int codePoint) {
        return codePoint < 0x7f ? 1 : Math.max(0, WCWidth.wcwidth(codePoint));
    }

    /** The text in lines that are no wider than that, broken at blanks where there are any. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        String left = text;
        while (width(left) > width) {
            int end = breakAt(left, width);
            lines.add(left.substring(0, end).stripTrailing());
            left = left.substring(end).stripLeading();
        }
        lines.add(left);
        lines.replaceAll(line -> line.replace(Rows.UNBROKEN, ' '));
        return lines;
    }

    private static int breakAt(String text, int width) {
        int end = 0;
        int used = 0;
        while (end < text.length() && used + width(text.codePointAt(end)) <= width) {
            used += width(text.codePointAt(end));
            end = text.offsetByCodePoints(end, 1);
        }
        int blank = text.lastIndexOf(' ', end);
        return blank > 0 ? blank : Math.max(end, text.offsetByCodePoints(0, 1));
    }
}
