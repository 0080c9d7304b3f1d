package counterbench.sheets;

import java.util.Comparator;
import java.util.Objects;

/**
 * Where a row stands.
 *
 * @param row the row's number as spreadsheets count it: the first row of the sheet is 1
 */
public record RowPosition(Sheet sheet, int row) {
    /** As rows stand in their files, file by file. */
    public static final Comparator<RowPosition> IN_FILES =
            Comparator.comparing((RowPosition at) -> at.sheet().file())
                    .thenComparing(at -> at.sheet().name())
                    .thenComparing(RowPosition::row);

    public RowPosition {
        Objects.requireNonNull(sheet, "sheet");
    }

    /** How people are told of it: {@code march.xlsx, sheet uses, row 12}. */
    public String shown() {
        return sheet.shown() + ", row " + row;
    }
}
