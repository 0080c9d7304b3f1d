package counterbench.printing.pdf;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws on one page. */
final class Pen implements AutoCloseable {
    /** A strong letter is drawn with a rim of this part of its size. */
    private static final float RIM = 0.035f;

    private static final float HAIRLINE = 0.5f;

    private final PDPageContentStream content;
    private final Letters letters;
    private final float height;

    Pen(PDDocument document, PDPage page, Letters letters) throws IOException {
        this.content = new PDPageContentStream(document, page, AppendMode.APPEND, true, true);
        this.letters = letters;
        this.height = page.getMediaBox().getHeight();
    }

    /**
     * Letters of a size.
     *
     * @param strong in heavier letters
     */
    record Style(float size, boolean strong) {
        /** From one line's foot to the next's. */
        float leading() {
            return size * 1.2f;
        }

        Style times(float factor) {
            return new Style(size * factor, strong);
        }
    }

    /** Draws a line whose letters hang below a height. */
    void text(float left, float top, Style style, String line) throws IOException {
        content.beginText();
        content.setFont(letters.font(), style.size());
        content.setRenderingMode(style.strong() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        content.setLineWidth(style.size() * RIM);
        content.newLineAtOffset(left, height - top - style.size());
        content.showText(letters.drawable(line));
        content.endText();
    }

    /** Fills an area with black. */
    void fill(Area area) throws IOException {
        add(area);
        content.fill();
    }

    /** Fills areas with black, all at once. */
    void fill(List<Area> areas) throws IOException {
        for (Area area : areas) {
            add(area);
        }
        content.fill();
    }

    /** Draws the rim of an area. */
    void frame(Area area) throws IOException {
        content.setLineWidth(HAIRLINE * 2);
        add(area);
        content.stroke();
    }

    /** Draws a fine line from left to right. */
    void rule(float left, float top, float width) throws IOException {
        content.setStrokingColor(Color.GRAY);
        content.setLineWidth(HAIRLINE);
        content.moveTo(left, height - top);
        content.lineTo(left + width, height - top);
        content.stroke();
        content.setStrokingColor(Color.BLACK);
    }

    private void add(Area area) throws IOException {
        content.addRect(
                area.left(), height - area.top() - area.height(), area.width(), area.height());
    }

    @Override
    public void close() throws IOException {
        content.close();
    }
}
