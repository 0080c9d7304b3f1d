package counterbench.printing.pdf;

import counterbench.printing.Block;
import counterbench.printing.Document;
import counterbench.printing.pdf.Pen.Style;
import java.io.IOException;
import java.util.List;

/** Draws a document block by block. */
final class DocumentPages {
    private static final Style TITLE = new Style(16, true);
    private static final Style HEADING = new Style(12, true);
    private static final Style TEXT = new Style(9.5f, false);
    private static final Style CAUTION = new Style(9.5f, true);
    private static final float GAP = 6;
    private static final float SYMBOL = 60;
    private static final float KEPT_TOGETHER = 60;

    private final PageFlow pages;

    DocumentPages(PageFlow pages) {
        this.pages = pages;
    }

    void draw(Document document) throws IOException {
        pages.write(document.title(), TITLE);
        for (Block block : document.blocks()) {
            pages.down(GAP);
            draw(block);
        }
    }

    private void draw(Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            pages.need(KEPT_TOGETHER);
            pages.write(heading.text(), HEADING);
        } else if (block instanceof Block.Paragraph paragraph) {
            pages.write(paragraph.text(), TEXT);
        } else if (block instanceof Block.Caution caution) {
            draw(caution);
        } else if (block instanceof Block.Symbol symbol) {
            draw(symbol);
        } else if (block instanceof Block.Table table) {
            new TableDrawing(pages, table).draw();
        }
    }

    private void draw(Block.Caution caution) throws IOException {
        List<String> lines =
                pages.letters().lines(caution.text(), CAUTION.size(), pages.width() - 2 * GAP);
        float height = lines.size() * CAUTION.leading() + 2 * GAP;
        pages.need(height);
        pages.pen().frame(new Area(pages.left(), pages.top(), pages.width(), height));
        pages.down(GAP);
        for (String line : lines) {
            pages.pen().text(pages.left() + GAP, pages.top(), CAUTION, line);
            pages.down(CAUTION.leading());
        }
        pages.down(GAP);
    }

    private void draw(Block.Symbol symbol) throws IOException {
        pages.need(SYMBOL);
        Modules modules = Modules.of(symbol.content());
        float width = modules.widthIn(SYMBOL);
        pages.pen().fill(modules.at(pages.left(), pages.top(), SYMBOL));
        float left = pages.left() + width + GAP;
        float top = pages.top();
        for (String line :
                pages.letters()
                        .lines(
                                symbol.content().bracketed(),
                                TEXT.size(),
                                pages.width() - width - GAP)) {
            pages.pen().text(left, top, TEXT, line);
            top += TEXT.leading();
        }
        pages.down(width);
    }
}
