package counterbench.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TriesTest {
    private static final Instant NOW = Instant.parse("2026-03-05T20:20:00Z");

    private static Tries afterFailures(int count) {
        Tries tries = Tries.NONE;
        for (int i = 0; i < count; i++) {
            tries = tries.failed(NOW);
        }
        return tries;
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "4, 0", "5, 30", "6, 60", "7, 120", "11, 1920", "12, 3600", "90, 3600"})
    void from_the_fifth_wrong_pin_on_the_wait_doubles_up_to_an_hour(int failures, int seconds) {
        assertThat(afterFailures(failures).left(NOW)).isEqualTo(Duration.ofSeconds(seconds));
    }

    @Test
    void the_wait_ends_at_its_very_moment() {
        Tries tries = afterFailures(5);
        assertThat(tries.left(NOW.plusSeconds(29))).isEqualTo(Duration.ofSeconds(1));
        assertThat(tries.left(NOW.plusSeconds(30))).isZero();
    }

    @Test
    void a_clock_that_was_set_back_makes_nobody_wait_for_days() {
        assertThat(afterFailures(5).left(NOW.minus(Duration.ofDays(3))))
                .isEqualTo(Duration.ofHours(1));
    }
}
