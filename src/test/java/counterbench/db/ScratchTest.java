package counterbench.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScratchTest {
    private static final long SEED = 20261127;
    private static final int NEAR = 20;

    @Test
    void a_map_that_outgrows_memory_answers_as_one_in_memory_does() {
        Random random = new Random(SEED);
        Map<String, Integer> expected = new HashMap<>();
        try (Scratch scratch = new Scratch(NEAR)) {
            Map<String, Integer> map = scratch.map();
            for (int i = 0; i < 20_000; i++) {
                String key = "J-" + random.nextInt(500);
                switch (random.nextInt(4)) {
                    case 0 -> assertThat(map.put(key, i)).isEqualTo(expected.put(key, i));
                    case 1 ->
                            assertThat(map.merge(key, 1, Integer::sum))
                                    .isEqualTo(expected.merge(key, 1, Integer::sum));
                    case 2 -> assertThat(map.containsKey(key)).isEqualTo(expected.containsKey(key));
                    default ->
                            assertThat(map.get(key))
                                    .as("seed %d, act %d", SEED, i)
                                    .isEqualTo(expected.get(key));
                }
            }
            assertThat(new HashMap<>(map)).isEqualTo(expected);
        }
    }

    @Test
    void maps_of_one_file_do_not_know_each_other() {
        try (Scratch scratch = new Scratch(NEAR)) {
            Map<Integer, String> jobs = scratch.map();
            Map<Integer, String> cores = scratch.map();
            for (int i = 0; i < 100; i++) {
                jobs.put(i, "J-" + i);
                cores.put(i, "C-" + i);
            }
            assertThat(jobs.get(7)).isEqualTo("J-7");
            assertThat(cores.get(7)).isEqualTo("C-7");
        }
    }

    @Test
    void what_was_cleared_is_forgotten_in_memory_and_file() {
        try (Scratch scratch = new Scratch(NEAR)) {
            Map<Integer, Boolean> map = scratch.map();
            for (int i = 0; i < 100; i++) {
                map.put(i, true);
            }
            map.clear();
            assertThat(map).doesNotContainKey(3).doesNotContainKey(99);
            map.put(3, true);
            assertThat(map.get(3)).isTrue();
        }
    }

    @Test
    void arrays_with_empty_places_come_back_as_they_went_in() {
        try (Scratch scratch = new Scratch(NEAR)) {
            Map<String, Object[]> rows = scratch.map();
            for (int i = 0; i < 100; i++) {
                rows.put("K-" + i, new Object[] {"K-" + i, null, "°C\n\u001f"});
            }
            assertThat(rows.get("K-1")).containsExactly("K-1", null, "°C\n\u001f");
        }
    }

    @Test
    void there_is_a_file_only_while_maps_are_large() {
        Path file;
        try (Scratch scratch = new Scratch(NEAR)) {
            Map<Integer, Integer> map = scratch.map();
            for (int i = 0; i < NEAR; i++) {
                map.put(i, i);
            }
            assertThat(scratch.file()).isEmpty();
            map.put(NEAR, NEAR);
            file = scratch.file().orElseThrow();
            assertThat(file).exists();
        }
        assertThat(file).doesNotExist();
    }
}
