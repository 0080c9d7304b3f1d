package counterbench.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Clock changes in the United States 2026: 8 March and 1 November, 15 U.S.C. 260a. */
class WrittenTimeTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private static Instant at(String text) {
        return WrittenTime.of(text).orElseThrow().at(CHICAGO);
    }

    @Test
    void a_time_may_be_local_or_have_an_offset() {
        Instant wanted = Instant.parse("2026-03-05T20:20:00Z");
        assertThat(at("2026-03-05 14:20")).isEqualTo(wanted);
        assertThat(at("2026-03-05T14:20:00.0000009")).isEqualTo(wanted);
        assertThat(at("2026-03-05T20:20Z")).isEqualTo(wanted);
        assertThat(at(" 2026-03-05 14:20 -0600 ")).isEqualTo(wanted);
    }

    @Test
    void what_is_no_time_is_none() {
        assertThat(WrittenTime.of("2026-03-05")).isEmpty();
        assertThat(WrittenTime.of("2026-02-29 10:00")).isEmpty();
        assertThat(WrittenTime.of("2026-03-05 14:20 +25:00")).isEmpty();
        assertThat(WrittenTime.of("5.3.2026 14:20")).isEmpty();
    }

    @Test
    void a_time_that_the_clocks_skip_is_refused() {
        assertThatThrownBy(() -> at("2026-03-08 02:30"))
                .isInstanceOf(Refused.class)
                .hasMessage(
                        "time \"2026-03-08 02:30\": did not exist in America/Chicago, where clocks"
                                + " went forward over it; add the offset");
    }

    @Test
    void a_time_that_the_clocks_show_twice_is_refused_unless_the_offset_tells() {
        assertThatThrownBy(() -> at("2026-11-01 01:30"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining(
                        "add the offset: 2026-11-01T01:30-05:00 or 2026-11-01T01:30-06:00");
        assertThat(at("2026-11-01 01:30-06:00")).isEqualTo("2026-11-01T07:30:00Z");
    }
}
