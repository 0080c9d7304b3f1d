package counterbench.acts.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What people type and say when they read an instrument. */
class MeasuredTest {
    private static Measured of(String text) {
        return Measured.of(text).orElseThrow();
    }

    @Test
    void a_number_may_have_a_unit_behind_it_with_or_without_a_blank() {
        assertThat(of("47.4")).isEqualTo(new Measured(new BigDecimal("47.4"), null));
        assertThat(of("31 lbf·ft")).isEqualTo(new Measured(new BigDecimal("31"), "lbf·ft"));
        assertThat(of("31lbf·ft")).isEqualTo(of("31 lbf·ft"));
        assertThat(of("-3.5 °C").unit()).isEqualTo("°C");
        assertThat(of("2 fl oz").unit()).isEqualTo("fl oz");
    }

    @Test
    void what_is_no_plain_decimal_is_no_reading() {
        for (String text : List.of("", "fast", "47,4", "4 7", "1e3", "1234567890", "0.1234567")) {
            assertThat(Measured.of(text)).as(text).isEmpty();
        }
    }

    @Test
    void several_readings_stand_in_a_row() {
        assertThat(Measured.row(List.of("47.4", "46.8", "lbf·ft", "2", "fl", "oz")).orElseThrow())
                .extracting(Measured::toString)
                .containsExactly("47.4", "46.8 lbf·ft", "2 fl oz");
        assertThat(Measured.row(List.of()).orElseThrow()).isEmpty();
        assertThat(Measured.row(List.of("with", "47"))).isEmpty();
    }

    @Test
    void a_time_is_brought_to_minutes_and_never_made_longer() {
        assertThat(of("4.5").minutes()).contains(new BigDecimal("4.5"));
        assertThat(of("90 s").minutes().orElseThrow()).isEqualByComparingTo("1.5");
        assertThat(of("100 s").minutes().orElseThrow()).isEqualByComparingTo("1.666666");
        assertThat(of("1 h").minutes().orElseThrow()).isEqualByComparingTo("60");
        assertThat(of("4.5 N·m").minutes()).isEmpty();
    }

    @Test
    void a_unit_is_the_same_however_it_is_spelt() {
        assertThat(of("31 ft-lb").hasUnit("lbf·ft")).isTrue();
        assertThat(of("31 Nm").hasUnit("N·m")).isTrue();
        assertThat(of("31").hasUnit("N·m")).isFalse();
        assertThat(of("31 lbf·in").hasUnit("lbf·ft")).isFalse();
    }
}
