package counterbench.sheets.poi;

import counterbench.sheets.report.ChartLayout;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Gathers rows by category while they are written. A chart shows 25 categories at most: lying bars
 * the largest first, others in the order in which they come; what is left over is one category.
 * Categories that come to nothing are left out. A line, which shows how something went on, has no
 * such category: of too many points it shows some at equal distances, the last one always.
 */
final class ChartData {
    private static final int SHOWN = 25;
    private static final int MOST_CATEGORIES = 10_000;
    private static final String OTHERS = "others";

    private final ChartLayout layout;
    private final Map<String, List<BigDecimal>> sums = new LinkedHashMap<>();

    /** One category with the value of each series. */
    record Point(String category, List<BigDecimal> values) {
        Point {
            values = List.copyOf(values);
        }
    }

    ChartData(ChartLayout layout) {
        this.layout = layout;
    }

    ChartLayout layout() {
        return layout;
    }

    void add(Map<String, ? extends @Nullable Object> row) {
        String category = category(row);
        boolean full = sums.size() >= MOST_CATEGORIES && !sums.containsKey(category);
        sums.merge(full ? OTHERS : category, values(row), ChartData::plus);
    }

    private String category(Map<String, ? extends @Nullable Object> row) {
        return layout.categories().stream()
                .map(row::get)
                .map(said -> said == null ? "not said" : said.toString())
                .collect(Collectors.joining(", "));
    }

    private List<BigDecimal> values(Map<String, ? extends @Nullable Object> row) {
        List<BigDecimal> values = new ArrayList<>();
        for (String field : layout.series()) {
            Object value = field.equals(ChartLayout.ROWS) ? Integer.valueOf(1) : row.get(field);
            values.add(value == null ? BigDecimal.ZERO : CellWriter.number(value));
        }
        return values;
    }

    private static List<BigDecimal> plus(List<BigDecimal> a, List<BigDecimal> b) {
        List<BigDecimal> sum = new ArrayList<>();
        for (int i = 0; i < a.size(); i++) {
            sum.add(a.get(i).add(b.get(i)));
        }
        return sum;
    }

    /** What the chart shows. */
    List<Point> points() {
        List<Point> points = new ArrayList<>();
        sums.forEach((category, values) -> points.add(new Point(category, values)));
        points.removeIf(p -> p.values().stream().allMatch(v -> v.signum() == 0));
        if (layout.type() == ChartLayout.Type.BAR) {
            points.sort(Comparator.comparing((Point p) -> p.values().get(0)).reversed());
        }
        if (points.size() <= SHOWN) {
            return List.copyOf(points);
        }
        return layout.type() == ChartLayout.Type.LINE ? thinned(points) : shortened(points);
    }

    private static List<Point> thinned(List<Point> points) {
        int step = (points.size() + SHOWN - 1) / SHOWN;
        List<Point> shown = new ArrayList<>();
        for (int i = (points.size() - 1) % step; i < points.size(); i += step) {
            shown.add(points.get(i));
        }
        return List.copyOf(shown);
    }

    private static List<Point> shortened(List<Point> points) {
        List<Point> shown = new ArrayList<>(points.subList(0, SHOWN - 1));
        List<BigDecimal> rest =
                points.subList(SHOWN - 1, points.size()).stream()
                        .map(Point::values)
                        .reduce(ChartData::plus)
                        .orElseThrow();
        shown.add(new Point(OTHERS, rest));
        return List.copyOf(shown);
    }
}
