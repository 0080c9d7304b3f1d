package counterbench.sheets;

import counterbench.shared.Refused;
import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordWrapper;
import java.util.ArrayList;
import java.util.List;

/** Turns the fields of a {@code .csv} file into rows, within the bounds of a spreadsheet. */
final class CsvRows extends AbstractBaseCsvCallbackHandler<SheetRow> {
    private final Sheet sheet;
    private List<Cell> cells = new ArrayList<>();
    private int row;

    CsvRows(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The row that is being read. */
    RowPosition position() {
        return new RowPosition(sheet, Math.max(1, row));
    }

    @Override
    protected void handleBegin(long line) {
        row++;
        cells = new ArrayList<>(cells.size());
    }

    @Override
    protected void handleField(int column, char[] buffer, int from, int length, boolean quoted) {
        if (column >= SheetLimits.COLUMNS) {
            throw refused("has more than " + SheetLimits.COLUMNS + " columns", "split the sheet");
        }
        if (length > SheetLimits.TEXT) {
            throw refused(
                    "a cell is longer than " + SheetLimits.TEXT + " characters",
                    "look for a quotation mark without its partner, or shorten the cell");
        }
        cells.add(Cell.text(checked(new String(buffer, from, length), quoted)));
    }

    private String checked(String text, boolean quoted) {
        if (text.indexOf(Utf8Reader.MALFORMED) >= 0) {
            throw refused("is not written in UTF-8", "save the file as CSV in UTF-8");
        }
        if (text.indexOf('\0') >= 0) {
            throw refused("holds a NUL character", "save the sheet again as CSV in UTF-8");
        }
        if (!quoted && text.indexOf('"') >= 0) {
            throw refused(
                    "has a quotation mark inside the cell " + Text.quoted(text),
                    "double the mark, and put the whole cell into quotation marks");
        }
        return text;
    }

    private Refused refused(String because, String todo) {
        return new Refused(position().shown(), because, todo);
    }

    @Override
    protected RecordWrapper<SheetRow> buildRecord() {
        return wrapRecord(new SheetRow(position(), cells));
    }
}
