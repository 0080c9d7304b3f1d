package counterbench.shell.print;

import java.util.List;

/** Text for people, broken between words where a line of the terminal ends. */
public final class Paragraph {
    private Paragraph() {}

    /** The lines of a text; those after the first are indented as it is. */
    public static List<String> lines(String text, int width) {
        String body = text.stripLeading();
        int indent = text.length() - body.length();
        if (text.length() <= width || width - indent < 1) {
            return List.of(text);
        }
        return Cells.wrapped(body, width - indent).stream()
                .map(line -> " ".repeat(indent) + line)
                .toList();
    }
}
