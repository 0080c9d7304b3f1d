package counterbench.sheets.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One sheet of a report.
 *
 * @param sheet what the program calls it
 * @param title what the workbook calls it
 * @param means what its rows are, for the Notes sheet; may be empty
 * @param fields every field that its rows may have, shown or not
 * @param apart rows whose sums are told once more below the totals; null where there are none
 */
public record SheetLayout(
        String sheet,
        String title,
        String means,
        List<ColumnLayout> columns,
        Set<String> fields,
        @Nullable Apart apart) {
    /**
     * Rows that are in the totals and whose sums must be known apart from the others.
     *
     * @param field the field that tells them
     * @param are what it holds in them
     * @param heading what their line below the totals is called
     */
    public record Apart(String field, List<String> are, String heading) {
        public Apart {
            Objects.requireNonNull(field, "field");
            Objects.requireNonNull(heading, "heading");
            are = List.copyOf(are);
        }
    }

    public SheetLayout {
        Objects.requireNonNull(sheet, "sheet");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(means, "means");
        columns = List.copyOf(columns);
        fields = Set.copyOf(fields);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("sheet " + sheet + " has no column");
        }
    }

    /** Whether any column ends in its sum. */
    public boolean hasTotals() {
        return columns.stream().anyMatch(ColumnLayout::total);
    }

    /** The place of the column that shows a field, from 0; -1 where none does. */
    public int indexOf(String field) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).field().equals(field))
                .findFirst()
                .orElse(-1);
    }

    /** How the column that shows a field is written; none where no column does. */
    public Optional<CellFormat> format(String field) {
        return columns.stream()
                .filter(c -> c.field().equals(field))
                .map(ColumnLayout::format)
                .findFirst();
    }

    /** The heading of the column that shows a field. */
    public String heading(String field) {
        int column = indexOf(field);
        return column < 0 ? field : columns.get(column).heading();
    }
}
