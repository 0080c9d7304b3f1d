package counterbench.spool;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SpooledRowsTest {
    private static List<Map<String, ? extends @Nullable Object>> all(SpooledRows rows) {
        List<Map<String, ? extends @Nullable Object>> all = new ArrayList<>();
        rows.each(all::add);
        return all;
    }

    @Test
    void rows_come_by_key_whatever_order_they_are_given_in() {
        long seed = new Random().nextLong();
        List<Integer> numbers = new ArrayList<>(IntStream.range(-700, 700).boxed().toList());
        Collections.shuffle(numbers, new Random(seed));
        try (SpooledRows rows = new SpooledRows(3)) {
            numbers.forEach(n -> rows.add(List.of(n), Map.of("n", n.longValue())));
            assertThat(all(rows).stream().map(row -> (Long) row.get("n")))
                    .as("seed %s", seed)
                    .isSortedAccordingTo(Comparator.nullsFirst(Comparator.naturalOrder()))
                    .hasSize(1400);
        }
    }

    @Test
    void rows_of_one_key_stay_in_the_order_in_which_they_came() {
        try (SpooledRows rows = new SpooledRows(2)) {
            for (int i = 0; i < 9; i++) {
                rows.add(List.of("same"), Map.of("n", (long) i));
            }
            assertThat(all(rows)).extracting(row -> row.get("n")).isSorted().hasSize(9);
        }
    }

    @Test
    void times_and_days_are_sorted_as_such() {
        try (SpooledRows rows = new SpooledRows(2)) {
            for (String at : List.of("2026-03-05T10:00:00.5Z", "1969-12-31T00:00:00Z")) {
                rows.add(List.of(Instant.parse(at)), Map.of("at", at));
            }
            for (String day : List.of("2026-10-01", "2026-09-30")) {
                rows.add(List.of(LocalDate.parse(day)), Map.of("at", day));
            }
            assertThat(all(rows).stream().map(row -> (String) row.get("at")))
                    .containsSubsequence("1969-12-31T00:00:00Z", "2026-03-05T10:00:00.5Z")
                    .containsSubsequence("2026-09-30", "2026-10-01");
        }
    }

    @Test
    void values_keep_type_and_digits_on_the_disk() {
        Map<String, @Nullable Object> row = new HashMap<>();
        row.put("text", "x".repeat(70_000) + " ü=");
        row.put("number", new BigDecimal("1234567890123456.780"));
        row.put("whole", 7L);
        row.put("day", LocalDate.of(2026, 3, 5));
        row.put("at", Instant.parse("2026-03-05T20:20:00.000001Z"));
        row.put("nothing", null);
        try (SpooledRows rows = new SpooledRows(1)) {
            rows.add(List.of("a"), row);
            row.remove("nothing");
            assertThat(all(rows).get(0)).isEqualTo(row);
        }
    }

    @Test
    void rows_can_be_asked_for_again() {
        try (SpooledRows rows = new SpooledRows(2)) {
            List.of("c", "a", "b").forEach(key -> rows.add(List.of(key), Map.of("k", key)));
            assertThat(all(rows)).isEqualTo(all(rows)).hasSize(3);
        }
    }
}
