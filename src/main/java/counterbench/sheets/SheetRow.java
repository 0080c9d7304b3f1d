package counterbench.sheets;

import java.util.List;

/**
 * One row as the file holds it: its cells from the first column on, empty ones at the end left out
 * or not.
 */
public record SheetRow(RowPosition at, List<Cell> cells) {
    public SheetRow {
        cells = List.copyOf(cells);
    }

    /** The cell of a column, counted from 0; empty where the row ends before it. */
    public Cell cell(int column) {
        return column < cells.size() ? cells.get(column) : Cell.EMPTY;
    }

    /** Whether no cell says anything. */
    public boolean isBlank() {
        return cells.stream().allMatch(Cell::isBlank);
    }
}
