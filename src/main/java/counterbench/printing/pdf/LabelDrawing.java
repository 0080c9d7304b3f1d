package counterbench.printing.pdf;

import counterbench.labels.Label;
import counterbench.printing.pdf.Pen.Style;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Draws one label: its symbol, what people read beside it, and what it says below. */
final class LabelDrawing {
    private static final Style HEADLINE = new Style(12, true);
    private static final Style LINE = new Style(7.5f, false);
    private static final Style CAUTION = new Style(7.5f, true);
    private static final Style READABLE = new Style(6.5f, false);
    private static final float MARGIN = 5;
    private static final float GAP = 4;
    private static final float SMALLEST = 0.5f;
    private static final float STEP = 0.05f;
    private static final float READABLE_PART = 0.24f;

    private final Pen pen;
    private final Letters letters;

    LabelDrawing(Pen pen, Letters letters) {
        this.pen = pen;
        this.letters = letters;
    }

    /** Something to say, and how. */
    private record Said(String text, Style style) {}

    /** One line as it is drawn. */
    private record Line(String text, Style style) {}

    void draw(Label label, Area place) throws IOException {
        Area inside = place.within(MARGIN);
        List<Line> readable =
                fitted(
                        List.of(new Said(label.content().bracketed(), READABLE)),
                        inside.width(),
                        inside.height() * READABLE_PART);
        float above = inside.height() - height(readable);
        Modules symbol = Modules.of(label.content());
        pen.fill(symbol.at(inside.left(), inside.top(), above));
        float indent = symbol.widthIn(above) + GAP;
        write(
                fitted(said(label), inside.width() - indent, above),
                inside.left() + indent,
                inside.top());
        write(readable, inside.left(), inside.bottom() - height(readable));
    }

    private static List<Said> said(Label label) {
        List<Said> said = new ArrayList<>();
        said.add(new Said(label.headline(), HEADLINE));
        label.lines().forEach(line -> said.add(new Said(line, LINE)));
        label.cautions().forEach(caution -> said.add(new Said(caution, CAUTION)));
        return said;
    }

    /** Lines in the largest letters in which all fit; if none do, as many of the smallest. */
    private List<Line> fitted(List<Said> said, float width, float height) throws IOException {
        for (float factor = 1; factor > SMALLEST; factor -= STEP) {
            List<Line> lines = lines(said, factor, width);
            if (height(lines) <= height) {
                return lines;
            }
        }
        List<Line> lines = lines(said, SMALLEST, width);
        while (height(lines) > height) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    private List<Line> lines(List<Said> said, float factor, float width) throws IOException {
        List<Line> lines = new ArrayList<>();
        for (Said each : said) {
            Style style = each.style().times(factor);
            for (String line : letters.lines(each.text(), style.size(), width)) {
                lines.add(new Line(line, style));
            }
        }
        return lines;
    }

    private static float height(List<Line> lines) {
        float height = 0;
        for (Line line : lines) {
            height += line.style().leading();
        }
        return height;
    }

    private void write(List<Line> lines, float left, float top) throws IOException {
        float at = top;
        for (Line line : lines) {
            pen.text(left, at, line.style(), line.text());
            at += line.style().leading();
        }
    }
}
