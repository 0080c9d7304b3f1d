package counterbench.acts.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class BatchLinesTest {
    private static List<UUID> entries(String job, String... lines) {
        BatchLines batch = new BatchLines("NORTH", job);
        List<UUID> entries = new ArrayList<>();
        for (String line : lines) {
            batch.next(line);
            entries.add(batch.entry());
        }
        return entries;
    }

    @Test
    void the_same_batch_names_the_same_entries_and_a_longer_one_the_same_first_ones() {
        assertThat(entries("N-1", "a", "b")).isEqualTo(entries("N-1", "a", "b"));
        assertThat(entries("N-1", "a", "b", "c"))
                .startsWith(entries("N-1", "a", "b").toArray(UUID[]::new));
    }

    @Test
    void equal_lines_of_one_batch_name_entries_of_their_own() {
        List<UUID> entries = entries("N-1", "HB-3013", "HB-3013", "", "");
        assertThat(new HashSet<>(entries)).hasSize(4);
    }

    @Test
    void a_line_after_another_beginning_or_of_another_job_is_another() {
        assertThat(entries("N-1", "a", "b").get(1)).isNotEqualTo(entries("N-1", "x", "b").get(1));
        assertThat(entries("N-1", "a")).isNotEqualTo(entries("N-2", "a"));
    }
}
