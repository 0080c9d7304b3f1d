package counterbench.shared;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class MinutesTest {
    @Test
    void a_length_of_time_is_told_in_full_seconds_and_never_as_longer_than_it_was() {
        assertThat(Minutes.text(Duration.ofMinutes(18))).isEqualTo("18 min");
        assertThat(Minutes.text(Duration.ofSeconds(750))).isEqualTo("12 min 30 s");
        assertThat(Minutes.text(Duration.ofMillis(833_999))).isEqualTo("13 min 53 s");
    }

    @Test
    void a_long_time_is_told_in_the_two_parts_that_matter_and_cut() {
        assertThat(Minutes.text(Duration.ofSeconds(30))).isEqualTo("30 s");
        assertThat(Minutes.text(Duration.ZERO)).isEqualTo("0 min");
        assertThat(Minutes.text(Duration.ofSeconds(3_599))).isEqualTo("59 min 59 s");
        assertThat(Minutes.text(Duration.ofSeconds(5_399))).isEqualTo("1 h 29 min");
        assertThat(Minutes.text(Duration.ofHours(24).minusSeconds(1))).isEqualTo("23 h 59 min");
        assertThat(Minutes.text(Duration.ofHours(25))).isEqualTo("1 day 1 h");
        assertThat(Minutes.text(Duration.ofMillis(19_922_421_480L))).isEqualTo("230 days 14 h");
        assertThat(Minutes.full(Duration.ofSeconds(5_399))).isEqualTo("1 h 29 min 59 s");
    }

    @Test
    void minutes_that_are_asked_for_stand_as_the_pack_says_them_or_in_whole_seconds_more() {
        assertThat(Minutes.text(new BigDecimal("18.000"))).isEqualTo("18 min");
        assertThat(Minutes.text(new BigDecimal("0.5"))).isEqualTo("0.5 min");
        assertThat(Minutes.text(new BigDecimal("90"))).isEqualTo("1 h 30 min");
        assertThat(Minutes.text(new BigDecimal("12.3456"))).isEqualTo("12 min 21 s");
    }

    /** 130 seconds are kept to six places of a minute. */
    @Test
    void minutes_that_were_read_off_a_clock_stand_to_the_nearest_second() {
        assertThat(Minutes.read(new BigDecimal("2.166666"))).isEqualTo("2 min 10 s");
        assertThat(Minutes.read(new BigDecimal("4.50"))).isEqualTo("4.5 min");
    }

    @Test
    void a_time_that_is_too_short_by_a_part_of_a_second_never_reads_as_long_enough() {
        for (String required : List.of("18", "12.34", "12.3451", "60", "90", "1440.5")) {
            BigDecimal minutes = new BigDecimal(required);
            Duration short1 = Minutes.length(minutes).minusMillis(1);
            assertThat(Minutes.isShorter(short1, minutes)).isTrue();
            assertThat(Minutes.text(short1)).isNotEqualTo(Minutes.text(minutes));
            assertThat(Minutes.number(short1)).isLessThan(minutes);
        }
        assertThat(Minutes.number(Duration.ofMinutes(17))).hasToString("17");
        assertThat(Minutes.number(Duration.ofMinutes(20))).hasToString("20");
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
