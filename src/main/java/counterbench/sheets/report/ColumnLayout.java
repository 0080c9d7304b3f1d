package counterbench.sheets.report;

import java.util.Objects;

/**
 * One column of a sheet.
 *
 * @param field what the rows call it
 * @param heading what people call it
 * @param width in characters; 0 to fit the first rows
 * @param total whether the column ends in its sum
 * @param means what it holds, for the Notes sheet; may be empty
 */
public record ColumnLayout(
        String field, String heading, int width, CellFormat format, boolean total, String means) {
    public ColumnLayout {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(means, "means");
        if (total && !format.isNumber()) {
            throw new IllegalArgumentException(field + " is no number and has no total");
        }
    }
}
