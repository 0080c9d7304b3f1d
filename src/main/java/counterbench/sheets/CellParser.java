package counterbench.sheets;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Makes of a cell the value that its column takes. Spaces around a cell's text do not count, in
 * text columns either. A cell that cannot be taken is complained of, and gives null.
 */
final class CellParser {
    private final FactKind kind;
    private final ZoneId zone;

    CellParser(FactKind kind, ZoneId zone) {
        this.kind = kind;
        this.zone = zone;
    }

    /** The value of a cell that says something. */
    @Nullable Object value(Column column, Cell cell, Complaint complaint) {
        if (refusesForm(cell, complaint)) {
            return null;
        }
        return switch (column.type()) {
            case TIME -> new TimeCells(zone).time(cell, complaint);
            case DATE -> TimeCells.day(cell, complaint);
            case QUANTITY, DECIMAL, AMOUNT -> NumberCells.decimal(kind, column, cell, complaint);
            case WHOLE -> NumberCells.whole(cell, complaint);
            case PARTS, ROLES -> list(column, cell, complaint);
            default -> word(column, text(column, cell, complaint), complaint);
        };
    }

    /** What no column can take. */
    private static boolean refusesForm(Cell cell, Complaint complaint) {
        switch (cell.form()) {
            case FORMULA -> complaint.wrong("is a formula", "save the sheet with values only");
            case ERROR -> complaint.wrong("is the error of a formula", "write the value");
            case BOOLEAN -> complaint.wrong("is true or false", "write the word or number meant");
            default -> {
                return false;
            }
        }
        return true;
    }

    private static @Nullable String list(Column column, Cell cell, Complaint complaint) {
        String text = text(column, cell, complaint);
        if (text == null) {
            return null;
        }
        return column.type() == ColumnType.PARTS
                ? ListCells.parts(text, complaint)
                : ListCells.roles(text, complaint);
    }

    /** The text of a cell, whatever words its column takes. */
    static @Nullable String text(Column column, Cell cell, Complaint complaint) {
        String text = Canonical.normalised(Text.trimmed(cell.text()));
        int longest = column.type().maxLength();
        if (refusesForm(cell, complaint) || refusesAsText(cell, complaint)) {
            return null;
        }
        if (text.length() > longest) {
            complaint.wrong(
                    "has " + text.length() + " characters", "at most " + longest + " are kept");
            return null;
        }
        if (Text.hidesSomething(text)) {
            complaint.wrong(
                    "holds a line break or a character that cannot be seen", "type it again");
            return null;
        }
        return cell.form() == Cell.Form.NUMBER ? NumberCells.digits(text, complaint) : text;
    }

    private static boolean refusesAsText(Cell cell, Complaint complaint) {
        if (cell.form() == Cell.Form.DATE) {
            complaint.wrong(
                    "is a date cell", "format the column as text, then type the value again");
        } else if (cell.form() == Cell.Form.SHAPED_NUMBER) {
            complaint.wrong(
                    "is a number that is shown otherwise than it is",
                    "format the column as text, then type the value again");
        } else {
            return false;
        }
        return true;
    }

    private static @Nullable String word(
            Column column, @Nullable String text, Complaint complaint) {
        if (text == null || column.words().isEmpty()) {
            return text;
        }
        Optional<String> word =
                column.words().stream().filter(w -> w.equalsIgnoreCase(text)).findFirst();
        if (word.isEmpty()) {
            complaint.wrong("is not known here", "write " + oneOf(column));
        }
        return word.orElse(null);
    }

    private static String oneOf(Column column) {
        return column.words().size() == 1
                ? column.words().get(0)
                : "one of " + String.join(", ", column.words());
    }
}
