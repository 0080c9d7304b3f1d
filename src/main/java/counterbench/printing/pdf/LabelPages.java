package counterbench.printing.pdf;

import counterbench.labels.Label;
import counterbench.printing.LabelSheet;
import counterbench.printing.Paper;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Draws labels where the places of a sheet are. */
final class LabelPages {
    private final PDDocument document;
    private final LabelSheet sheet;
    private final Letters letters;

    LabelPages(PDDocument document, LabelSheet sheet) throws IOException {
        this.document = document;
        this.sheet = sheet;
        this.letters = new Letters(document);
    }

    /**
     * Where the places are.
     *
     * @param first the upper left one
     * @param across from one's left side to the next's
     */
    private record Grid(Area first, float across) {
        private static final float INCH = 72;
        private static final float MM = INCH / 25.4f;

        static Grid of(Paper paper) {
            return switch (paper) {
                case LETTER ->
                        new Grid(
                                new Area(INCH * 3 / 16, INCH / 2, INCH * 21 / 8, INCH),
                                INCH * 11 / 4);
                case A4 -> new Grid(new Area(0, 4.5f * MM, 70 * MM, 36 * MM), 70 * MM);
            };
        }

        Area place(int number) {
            int column = number % Paper.LABELS_ACROSS;
            int row = number / Paper.LABELS_ACROSS;
            return new Area(
                    first.left() + column * across,
                    first.top() + row * first.height(),
                    first.width(),
                    first.height());
        }
    }

    void draw() throws IOException {
        int perSheet = sheet.paper().labels();
        int next = 0;
        for (int page = 0; page < sheet.sheets(); page++) {
            int skip = page == 0 ? sheet.skip() : 0;
            int end = Math.min(sheet.labels().size(), next + perSheet - skip);
            draw(sheet.labels().subList(next, end), skip);
            next = end;
        }
    }

    private void draw(List<Label> labels, int skip) throws IOException {
        PDPage page = new PDPage(PaperSize.of(sheet.paper()));
        document.addPage(page);
        try (Pen pen = new Pen(document, page, letters)) {
            LabelDrawing drawing = new LabelDrawing(pen, letters);
            for (int i = 0; i < labels.size(); i++) {
                drawing.draw(labels.get(i), place(sheet.paper(), skip + i));
            }
        }
    }

    /**
     * The area of a place of the sheet that is drawn on, from 0 at the upper left. Printers do not
     * reach the edge of the paper, where the outer labels of A4 begin.
     */
    static Area place(Paper paper, int number) {
        Area place = Grid.of(paper).place(number);
        return paper == Paper.A4 ? place.within(2 * Grid.MM) : place;
    }
}
