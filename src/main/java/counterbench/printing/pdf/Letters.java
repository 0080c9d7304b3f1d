package counterbench.printing.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of a file. It comes with the library and goes into the file, so that a page
 * looks the same everywhere, and the machine's own typefaces need not be searched.
 */
final class Letters {
    private static final String TYPEFACE =
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final float PER_SIZE = 1000;

    private final PDFont font;

    Letters(PDDocument document) throws IOException {
        try (InputStream bytes = PDDocument.class.getResourceAsStream(TYPEFACE)) {
            font = PDType0Font.load(document, Objects.requireNonNull(bytes, TYPEFACE), true);
        }
    }

    PDFont font() {
        return font;
    }

    /** The text with a code, such as {@code \\u4e2d}, for each character that has no shape. */
    String drawable(String text) {
        StringBuilder drawn = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .forEach(
                        c -> {
                            if (hasShape(c)) {
                                drawn.appendCodePoint(c);
                            } else {
                                drawn.append(String.format("\\u%04x", c));
                            }
                        });
        return drawn.toString();
    }

    private boolean hasShape(int character) {
        try {
            return !Character.isISOControl(character)
                    && Character.getType(character) != Character.FORMAT
                    && font.encode(Character.toString(character)).length > 0;
        } catch (IllegalArgumentException | IOException e) {
            return false;
        }
    }

    /** How wide a drawable text is. */
    float width(String text, float size) throws IOException {
        return font.getStringWidth(text) * size / PER_SIZE;
    }

    /** A text as drawable lines that are not too wide, broken at blanks where that is possible. */
    List<String> lines(String text, float size, float width) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            String line = "";
            for (String word : drawable(paragraph).split(" ", -1)) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (width(longer, size) <= width) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = broken(word, size, width, lines);
            }
            lines.add(line);
        }
        return lines;
    }

    /** Puts the whole lines of a word that is too wide to the others, and gives what is left. */
    private String broken(String word, float size, float width, List<String> lines)
            throws IOException {
        String left = word;
        while (width(left, size) > width && left.codePointCount(0, left.length()) > 1) {
            int end = left.length();
            while (width(left.substring(0, end), size) > width && end > firstLetter(left)) {
                end = left.offsetByCodePoints(end, -1);
            }
            lines.add(left.substring(0, end));
            left = left.substring(end);
        }
        return left;
    }

    private static int firstLetter(String text) {
        return text.offsetByCodePoints(0, 1);
    }
}
