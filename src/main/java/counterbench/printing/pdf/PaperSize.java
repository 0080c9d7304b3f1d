package counterbench.printing.pdf;

import counterbench.printing.Paper;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** How large paper is. */
final class PaperSize {
    private PaperSize() {}

    static PDRectangle of(Paper paper) {
        return switch (paper) {
            case LETTER -> PDRectangle.LETTER;
            case A4 -> PDRectangle.A4;
        };
    }
}
