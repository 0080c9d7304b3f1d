package counterbench.sheets.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How a workbook is laid out: its sheets in order, then a sheet of notes.
 *
 * @param title what the workbook is called
 * @param notes what the last sheet is called
 * @param paper the paper that it is printed on
 * @param leftOut sheets that the program makes rows for, and the workshop does not want
 */
public record ReportLayout(
        String title,
        Paper paper,
        String notes,
        List<SheetLayout> sheets,
        List<ChartLayout> charts,
        Set<String> leftOut) {
    /** Paper to print on. */
    public enum Paper {
        LETTER,
        A4
    }

    /** What the program calls the last sheet. */
    public static final String NOTES = "Notes";

    public ReportLayout {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(notes, "notes");
        sheets = List.copyOf(sheets);
        charts = List.copyOf(charts);
        leftOut = Set.copyOf(leftOut);
    }

    /** The sheet that the program calls so. */
    public Optional<SheetLayout> sheet(String sheet) {
        return sheets.stream().filter(s -> s.sheet().equals(sheet)).findFirst();
    }
}
