package counterbench.sheets.poi;

import counterbench.shared.Refused;
import counterbench.sheets.Cell;
import counterbench.sheets.RowPosition;
import counterbench.sheets.RowSink;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetLimits;
import counterbench.sheets.SheetRow;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Hands the rows of a sheet's XML over, one by one. */
final class RowHandler extends DefaultHandler {
    private final Sheet sheet;
    private final CellTypes types;
    private final RowSink rows;
    private final TextCollector text = new TextCollector();
    private List<Cell> cells = new ArrayList<>();
    private String type = "n";
    private int style;
    private int column;
    private int row;
    private boolean inData;
    private @Nullable String formula;
    private boolean begun;
    private @Nullable RuntimeException failure;

    RowHandler(Sheet sheet, CellTypes types, RowSink rows) {
        this.sheet = sheet;
        this.types = types;
        this.rows = rows;
    }

    /** How people are told of the row that is being read. */
    String shown() {
        return row == 0 ? sheet.shown() : new RowPosition(sheet, row).shown();
    }

    /** What the taker of the rows threw, if it did. */
    @Nullable RuntimeException failure() {
        return failure;
    }

    /** Refuses a sheet that had no row. */
    void finish() {
        if (!begun) {
            throw new Refused(sheet.shown(), "is empty", "the first row names the columns");
        }
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes said) {
        switch (name) {
            case "sheetData" -> inData = true;
            case "row" -> startRow(said);
            case "c" -> startCell(said);
            default -> {}
        }
        text.start(name);
    }

    private void startRow(Attributes said) {
        String number = said.getValue("r");
        row = number == null ? row + 1 : Integer.parseInt(number);
        if (row < 1 || row > SheetLimits.ROWS) {
            throw new NumberFormatException("row " + row);
        }
        column = 0;
        cells = new ArrayList<>(cells.size());
    }

    private void startCell(Attributes said) {
        String reference = said.getValue("r");
        column = reference == null ? column : columnOf(reference);
        if (column >= SheetLimits.COLUMNS) {
            throw new TooMuch(
                    "has more than " + SheetLimits.COLUMNS + " columns", "split the sheet");
        }
        type = said.getValue("t") == null ? "n" : said.getValue("t");
        style = said.getValue("s") == null ? 0 : Integer.parseInt(said.getValue("s"));
        formula = null;
        text.clear();
    }

    /** The column of a reference such as {@code AB12}, from 0. */
    private static int columnOf(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && i < 4; i++) {
            char c = reference.charAt(i);
            if (c < 'A' || c > 'Z') {
                break;
            }
            column = column * 26 + c - 'A' + 1;
        }
        return column - 1;
    }

    @Override
    public void characters(char[] chars, int from, int length) {
        if (inData) {
            text.add(chars, from, length);
        }
    }

    @Override
    public void endElement(String uri, String name, String prefixed) {
        text.end(name);
        switch (name) {
            case "sheetData" -> inData = false;
            case "row" -> endRow();
            case "c" -> endCell();
            case "f" -> endFormula();
            default -> {}
        }
    }

    private void endFormula() {
        formula = "=" + text.raw();
        text.clear();
    }

    /** A formula stands for itself: its outcome may be wrong in the file. */
    private void endCell() {
        place(
                formula == null
                        ? types.cell(type, style, text)
                        : new Cell(Cell.Form.FORMULA, formula));
        column++;
    }

    private void place(Cell cell) {
        if (cells.size() > column) {
            throw new IllegalStateException("cell " + column + " of row " + row + " comes twice");
        }
        while (cells.size() < column) {
            cells.add(Cell.EMPTY);
        }
        cells.add(cell);
    }

    private void endRow() {
        SheetRow read = new SheetRow(new RowPosition(sheet, row), cells);
        try {
            if (begun) {
                rows.row(read);
            } else if (!read.isBlank()) {
                begun = true;
                rows.headings(read);
            }
        } catch (RuntimeException e) {
            failure = e;
            throw e;
        }
    }
}
