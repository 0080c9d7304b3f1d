package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.sheets.report.ChartLayout;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChartDataTest {
    private static List<ChartData.Point> points(ChartLayout.Type type, int count) {
        ChartData data =
                new ChartData(
                        new ChartLayout(
                                type, "Done", "Weeks", List.of("week"), List.of("done"), "Weeks"));
        for (int i = 1; i <= count; i++) {
            data.add(Map.of("week", "W" + i, "done", BigDecimal.valueOf(i)));
        }
        return data.points();
    }

    @ParameterizedTest
    @ValueSource(ints = {26, 49, 50, 51, 104, 1000})
    void a_line_of_too_many_points_ends_with_its_last_and_adds_none_together(int count) {
        List<ChartData.Point> points = points(ChartLayout.Type.LINE, count);

        assertThat(points).hasSizeLessThanOrEqualTo(25).hasSizeGreaterThan(12);
        assertThat(points)
                .allSatisfy(p -> assertThat(p.category()).isEqualTo("W" + p.values().get(0)));
        assertThat(points.get(points.size() - 1).category()).isEqualTo("W" + count);
    }

    @Test
    void bars_of_too_many_categories_add_the_small_ones_together() {
        List<ChartData.Point> points = points(ChartLayout.Type.BAR, 30);

        assertThat(points).hasSize(25);
        assertThat(points.get(0))
                .isEqualTo(new ChartData.Point("W30", List.of(new BigDecimal(30))));
        assertThat(points.get(24))
                .isEqualTo(new ChartData.Point("others", List.of(new BigDecimal(21))));
    }
}
