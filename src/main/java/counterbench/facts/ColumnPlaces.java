package counterbench.facts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Where the headings of a kind stand among its columns. */
final class ColumnPlaces {
    private final List<Column> columns;
    private final Map<String, Integer> exact = new HashMap<>();

    ColumnPlaces(List<Column> columns) {
        this.columns = columns;
        for (int i = 0; i < columns.size(); i++) {
            exact.put(columns.get(i).heading(), i);
        }
    }

    /** The place of a heading in any letter case. */
    OptionalInt find(String heading) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).heading().equalsIgnoreCase(heading))
                .findFirst();
    }

    /**
     * The place of a heading that is there, written as the kind writes it; scans ask for each row.
     */
    int of(String heading) {
        Integer place = exact.get(heading);
        if (place == null) {
            throw new IllegalArgumentException("there is no column " + heading);
        }
        return place;
    }
}
