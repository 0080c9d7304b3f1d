package counterbench.printing.pdf;

import counterbench.printing.Block;
import counterbench.printing.pdf.Pen.Style;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Draws a table row by row. */
final class TableDrawing {
    private static final Style HEADING = new Style(8, true);
    private static final Style CELL = new Style(8.5f, false);
    private static final float PADDING = 3;

    private final PageFlow pages;
    private final Block.Table table;
    private final List<Float> widths = new ArrayList<>();

    TableDrawing(PageFlow pages, Block.Table table) {
        this.pages = pages;
        this.table = table;
        int shares = table.columns().stream().mapToInt(Block.Column::share).sum();
        for (Block.Column column : table.columns()) {
            widths.add(pages.width() * column.share() / shares);
        }
    }

    void draw() throws IOException {
        headings();
        for (List<String> row : table.rows()) {
            List<List<String>> cells = broken(row, CELL);
            if (pages.need(height(cells, CELL))) {
                headings();
            }
            draw(cells, CELL);
        }
    }

    private void headings() throws IOException {
        List<List<String>> cells =
                broken(table.columns().stream().map(Block.Column::heading).toList(), HEADING);
        // A heading alone at the foot of a page would head nothing.
        pages.need(height(cells, HEADING) + 2 * CELL.leading());
        draw(cells, HEADING);
    }

    private List<List<String>> broken(List<String> row, Style style) throws IOException {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            float width = widths.get(i) - PADDING;
            cells.add(pages.letters().lines(row.get(i), style.size(), width));
        }
        return cells;
    }

    private static float height(List<List<String>> cells, Style style) {
        int lines = cells.stream().mapToInt(List::size).max().orElse(0);
        return lines * style.leading() + PADDING;
    }

    private void draw(List<List<String>> cells, Style style) throws IOException {
        float left = pages.left();
        for (int i = 0; i < cells.size(); i++) {
            float top = pages.top();
            for (String line : cells.get(i)) {
                pages.pen().text(left, top, style, line);
                top += style.leading();
            }
            left += widths.get(i);
        }
        pages.down(height(cells, style));
        pages.pen().rule(pages.left(), pages.top() - PADDING / 2, pages.width());
    }
}
