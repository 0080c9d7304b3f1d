package counterbench.facts;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * One column of a kind.
 *
 * @param heading the heading in sheets
 * @param required whether every row must say it
 * @param words the only words that it may hold; empty where any value of the type will do
 */
public record Column(String heading, ColumnType type, boolean required, List<String> words) {
    public Column {
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(type, "type");
        words = List.copyOf(words);
    }

    static Column column(ColumnType type, String heading) {
        return new Column(heading, type, false, List.of());
    }

    static Column text(String heading) {
        return column(ColumnType.TEXT, heading);
    }

    static Column date(String heading) {
        return column(ColumnType.DATE, heading);
    }

    static Column instant(String heading) {
        return column(ColumnType.TIME, heading);
    }

    static Column quantity(String heading) {
        return column(ColumnType.QUANTITY, heading);
    }

    static Column decimal(String heading) {
        return column(ColumnType.DECIMAL, heading);
    }

    static Column note(String heading) {
        return column(ColumnType.NOTE, heading);
    }

    static Column oneOf(String heading, String... words) {
        return new Column(heading, ColumnType.TEXT, false, List.of(words));
    }

    static List<Column> required(Column... columns) {
        return Arrays.stream(columns).map(Column::asRequired).toList();
    }

    private Column asRequired() {
        return new Column(heading, type, true, words);
    }
}
