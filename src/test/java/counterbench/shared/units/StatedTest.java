package counterbench.shared.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StatedTest {
    private static Stated stated(String text) {
        return Stated.parse(text).orElseThrow();
    }

    /** Pairs as procedures print them: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "22 lbf·ft, 30 N·m, true",
        "18 lbf·ft, 24 N·m, true",
        "24 lbf·ft, 32 N·m, true",
        "72 lbf·in, 8 N·m, true",
        "8000 psi, 59000 kPa, false",
    })
    void two_units_agree_within_their_rounding(String a, String b, boolean agree) {
        assertThat(stated(a).agreesWith(stated(b))).isEqualTo(agree);
        assertThat(stated(b).agreesWith(stated(a))).isEqualTo(agree);
    }

    @ParameterizedTest
    @CsvSource({
        "27 V, 28 V, true",
        "26.9 V, 28 V, false",
        "27.0 V, 28 V, false",
        "27.4 V, 28 V, false",
        "27.45 V, 28 V, false",
        "27.46 V, 28 V, false",
        "27.5 V, 28 V, true",
        "0.65 V, 0.655 V, true",
        "0.65 V, 0.6545 V, true",
        "0.65 V, 0.656 V, false",
        "0.650 V, 0.651 V, true",
        "100 °C, 212 °F, true",
        "100 °C, 213.4 °F, false",
        "100 °C, 211.05 °F, false",
        "100 °C, 211.1 °F, true",
    })
    void a_value_stands_for_half_a_unit_in_its_last_digit(String a, String b, boolean agree) {
        assertThat(stated(a).agreesWith(stated(b))).isEqualTo(agree);
    }

    @ParameterizedTest
    @CsvSource({
        "8000 psi, 59000 kPa, 55158 kPa",
        "59000 kPa, 8000 psi, 8557.2 psi",
        "28 lbf·ft, 35 N·m, 38.0 N·m",
    })
    void a_value_is_shown_in_the_other_unit(String a, String b, String shown) {
        assertThat(stated(a).in(stated(b))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"31 lbf·ft, 31 lbf·ft", "31ft-lb, 31 lbf·ft", "' -2.50  °c ', -2.50 °C"})
    void a_number_with_its_unit_is_read(String text, String shown) {
        assertThat(stated(text)).hasToString(shown);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "31", "N·m", "31 furlong", "1,000 psi", "1e3 psi", "3..1 V", "3. V"})
    void other_text_is_not(String text) {
        assertThat(Stated.parse(text)).isEmpty();
    }
}
