package counterbench.sheets.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads the charts of a layout, whose sheets have been read before. */
final class ChartReader {
    private static final List<String> KEYS =
            List.of("type", "title", "of", "categories", "series", "place");

    private final List<SheetLayout> sheets;

    ChartReader(List<SheetLayout> sheets) {
        this.sheets = List.copyOf(sheets);
    }

    Optional<ChartLayout> read(LayoutNode node) {
        Map<String, LayoutNode> keys = node.map(KEYS);
        List<String> missing =
                KEYS.stream().filter(k -> !k.equals("place") && !keys.containsKey(k)).toList();
        if (!missing.isEmpty()) {
            node.refuse("chart", "has no " + String.join(", ", missing), "add it");
            return Optional.empty();
        }
        String of = there(keys, "of").oneOf("sheet", names());
        return sheets.stream()
                .filter(s -> s.sheet().equals(of))
                .findFirst()
                .map(sheet -> chart(keys, sheet));
    }

    private ChartLayout chart(Map<String, LayoutNode> keys, SheetLayout of) {
        Set<String> fields = new TreeSet<>(of.fields());
        return new ChartLayout(
                ChartLayout.Type.valueOf(
                        there(keys, "type")
                                .oneOf("type", List.of("bar", "column", "line"))
                                .toUpperCase(Locale.ROOT)),
                there(keys, "title").text("title"),
                of.sheet(),
                categories(there(keys, "categories"), fields),
                series(there(keys, "series"), of, fields),
                place(keys.get("place"), of));
    }

    private static LayoutNode there(Map<String, LayoutNode> keys, String key) {
        return Objects.requireNonNull(keys.get(key));
    }

    private static List<String> categories(LayoutNode node, Set<String> fields) {
        return node.list().stream().map(item -> item.oneOf("field", fields)).toList();
    }

    private static List<String> series(LayoutNode node, SheetLayout of, Set<String> fields) {
        Set<String> known = new TreeSet<>(fields);
        known.add(ChartLayout.ROWS);
        List<String> series = new ArrayList<>();
        for (LayoutNode item : node.list()) {
            String field = item.oneOf("field", known);
            int column = of.indexOf(field);
            if (column >= 0 && !of.columns().get(column).format().isNumber()) {
                item.refuse("field " + LayoutNode.quoted(field), "is no number", "sum another");
            }
            series.add(field);
        }
        return series;
    }

    private String place(@Nullable LayoutNode node, SheetLayout of) {
        if (node == null) {
            return of.sheet();
        }
        List<String> names = new ArrayList<>(names());
        names.add(ReportLayout.NOTES);
        String place = node.oneOf("sheet", names);
        if (names.indexOf(place) < names.indexOf(of.sheet())) {
            node.refuse(
                    "place " + LayoutNode.quoted(place),
                    "stands before " + of.sheet(),
                    "place the chart on that sheet or a later one");
        }
        return place;
    }

    private List<String> names() {
        return sheets.stream().map(SheetLayout::sheet).toList();
    }
}
