package counterbench.printing.pdf;

import counterbench.printing.Document;
import counterbench.printing.pdf.Pen.Style;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Pages that are filled from top to bottom, one after the other. */
final class PageFlow implements AutoCloseable {
    private static final float MARGIN = 50;
    private static final Style FOOT = new Style(7.5f, false);

    private final PDDocument file;
    private final Document document;
    private final Letters letters;
    private final PDRectangle size;
    private final List<PDPage> pages = new ArrayList<>();
    private Pen pen;
    private float top = MARGIN;

    PageFlow(PDDocument file, Document document) throws IOException {
        this.file = file;
        this.document = document;
        this.letters = new Letters(file);
        this.size = PaperSize.of(document.paper());
        this.pen = newPage();
    }

    private Pen newPage() throws IOException {
        PDPage page = new PDPage(size);
        file.addPage(page);
        pages.add(page);
        return new Pen(file, page, letters);
    }

    Letters letters() {
        return letters;
    }

    Pen pen() {
        return pen;
    }

    float left() {
        return MARGIN;
    }

    float width() {
        return size.getWidth() - 2 * MARGIN;
    }

    /** Where the next thing is drawn. */
    float top() {
        return top;
    }

    /** Goes on to the next page where a height does not fit; says whether it did. */
    boolean need(float height) throws IOException {
        boolean fits = top + height <= size.getHeight() - MARGIN || top <= MARGIN;
        if (!fits) {
            pen.close();
            pen = newPage();
            top = MARGIN;
        }
        return !fits;
    }

    /** Goes down. */
    void down(float height) {
        top += height;
    }

    /** Draws text from the left, going down line by line. */
    void write(String text, Style style) throws IOException {
        for (String line : letters.lines(text, style.size(), width())) {
            need(style.leading());
            pen.text(left(), top, style, line);
            down(style.leading());
        }
    }

    /** Draws the feet of all pages, now that their number is known. */
    @Override
    public void close() throws IOException {
        pen.close();
        for (int i = 0; i < pages.size(); i++) {
            try (Pen foot = new Pen(file, pages.get(i), letters)) {
                String number = "page " + (i + 1) + " of " + pages.size();
                float below = size.getHeight() - MARGIN + FOOT.leading();
                float right = MARGIN + width() - letters.width(number, FOOT.size());
                foot.text(right, below, FOOT, number);
                footer(foot, below, right - 2 * MARGIN);
            }
        }
    }

    private void footer(Pen foot, float top, float width) throws IOException {
        List<String> lines = letters.lines(document.footer(), FOOT.size(), width);
        foot.text(left(), top, FOOT, lines.get(0));
    }
}
