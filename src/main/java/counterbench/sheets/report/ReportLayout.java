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
    /** Paper to print on, in points of 1/72 inch. */
    public enum Paper {
        LETTER(612, 792),
        A4(595, 842),
        /** Twice letter. */
        TABLOID(792, 1224),
        /** Twice A4. */
        A3(842, 1191);

        private final int shortSide;
        private final int longSide;

        Paper(int shortSide, int longSide) {
            this.shortSide = shortSide;
            this.longSide = longSide;
        }

        /** Its width in points, lying or upright. */
        public int width(boolean lying) {
            return lying ? longSide : shortSide;
        }

        /** Its height in points, lying or upright. */
        public int height(boolean lying) {
            return lying ? shortSide : longSide;
        }
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
