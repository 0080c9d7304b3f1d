package counterbench.cores;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class MinutesTest {
    @Test
    void a_length_of_time_is_told_in_full_seconds_and_never_as_longer_than_it_was() {
        assertThat(Minutes.text(Duration.ofMinutes(18))).isEqualTo("18 min");
        assertThat(Minutes.text(Duration.ofSeconds(750))).isEqualTo("12 min 30 s");
        assertThat(Minutes.text(Duration.ofMillis(833_999))).isEqualTo("13 min 53 s");
    }

    /** Whoever goes by a clock without seconds would else end a drain up to a minute early. */
    @Test
    void a_moment_is_over_at_the_next_full_minute() {
        Instant full = Instant.parse("2026-04-10T17:18:00Z");
        assertThat(Minutes.over(full)).isEqualTo(full);
        assertThat(Minutes.over(Instant.parse("2026-04-10T17:17:00.000001Z"))).isEqualTo(full);
        assertThat(Minutes.over(Instant.parse("2026-04-10T17:17:59Z"))).isEqualTo(full);
    }
}
