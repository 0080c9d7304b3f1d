package counterbench.sheets;

import java.util.Objects;

/**
 * One cell as the file holds it, before a column says what it should be.
 *
 * @param form what the file says that it is
 * @param text its text; for a number the digits as the file writes them, for a date the day and
 *     time in ISO 8601
 */
public record Cell(Form form, String text) {
    /** A cell with nothing in it. */
    public static final Cell EMPTY = new Cell(Form.TEXT, "");

    /** What a file can say of a cell. A {@code .csv} knows text only. */
    public enum Form {
        TEXT,
        /** A number that is shown as it is. */
        NUMBER,
        /** A number that is shown otherwise than it is, such as {@code 00042} or {@code 12.00}. */
        SHAPED_NUMBER,
        /** A day, {@code 2026-03-05}, or a day and time, {@code 2026-03-05T14:20:00}. */
        DATE,
        BOOLEAN,
        /** What a spreadsheet shows where a formula failed, such as {@code #N/A}. */
        ERROR,
        /** A cell that is computed from others. */
        FORMULA
    }

    public Cell {
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(text, "text");
    }

    /** A cell of plain text. */
    public static Cell text(String text) {
        return text.isEmpty() ? EMPTY : new Cell(Form.TEXT, text);
    }

    /** Whether nothing is said: no text, or only spaces. */
    public boolean isBlank() {
        return form == Form.TEXT && Text.trimmed(text).isEmpty();
    }
}
