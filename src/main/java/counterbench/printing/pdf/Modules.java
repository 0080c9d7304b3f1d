package counterbench.printing.pdf;

import counterbench.labels.gs1.Element;
import counterbench.labels.gs1.ElementString;
import java.util.List;
import java.util.stream.Collectors;
import uk.org.okapibarcode.backend.DataMatrix;
import uk.org.okapibarcode.backend.Symbol;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * The dark areas of a GS1 DataMatrix symbol.
 *
 * @param side how many modules the square symbol has from side to side
 * @param dark the dark areas, in modules
 */
record Modules(int side, List<Area> dark) {
    /** Light modules all around, which scanners need (GS1 General Specifications, section 5.6). */
    private static final int QUIET = 1;

    /** A module of 0.6 mm, which any scanner can read, even from a poor printer. */
    private static final float WIDEST = 1.7f;

    /** The symbol of a label. */
    static Modules of(ElementString content) {
        DataMatrix symbol = new DataMatrix();
        symbol.setDataType(Symbol.DataType.GS1);
        symbol.setForceMode(DataMatrix.ForceMode.SQUARE);
        symbol.setModuleWidth(1);
        symbol.setContent(
                content.elements().stream().map(Modules::bracketed).collect(Collectors.joining()));
        return new Modules(
                symbol.getActualWidth(),
                symbol.getRectangles().stream().map(Modules::area).toList());
    }

    private static String bracketed(Element element) {
        return "[" + element.ai() + "]" + element.value();
    }

    private static Area area(Rectangle r) {
        return new Area((float) r.x, (float) r.y, (float) r.width, (float) r.height);
    }

    /** How wide it is drawn, with the light modules around it. */
    float widthIn(float most) {
        return moduleIn(most) * (side + 2 * QUIET);
    }

    private float moduleIn(float most) {
        return Math.min(WIDEST, most / (side + 2 * QUIET));
    }

    /** The dark areas as they are drawn into a square, in its upper left corner. */
    List<Area> at(float left, float top, float most) {
        float module = moduleIn(most);
        return dark.stream()
                .map(
                        d ->
                                new Area(
                                        left + (d.left() + QUIET) * module,
                                        top + (d.top() + QUIET) * module,
                                        d.width() * module,
                                        d.height() * module))
                .toList();
    }
}
