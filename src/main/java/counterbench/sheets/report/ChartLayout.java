package counterbench.sheets.report;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A chart over the rows of a sheet, gathered by category: for each category the sum of each series'
 * field, or how many rows there are.
 *
 * @param of the sheet whose rows are gathered
 * @param categories the fields that rows are gathered by, each combination a category
 * @param series the fields that are summed; {@link #ROWS} counts rows
 * @param place the sheet on which chart and gathered rows stand, below its own rows
 */
public record ChartLayout(
        Type type,
        String title,
        String of,
        List<String> categories,
        List<String> series,
        String place) {
    /** The series that counts rows. */
    public static final String ROWS = "rows";

    /** How a chart is drawn. */
    public enum Type {
        /** Lying bars, for categories with long names. */
        BAR,
        /** Standing bars. */
        COLUMN,
        LINE
    }

    public ChartLayout {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(place, "place");
        categories = List.copyOf(categories);
        series = List.copyOf(series);
    }

    /** What stands above its categories. */
    public String heading(SheetLayout source) {
        return categories.stream().map(source::heading).collect(Collectors.joining(", "));
    }
}
