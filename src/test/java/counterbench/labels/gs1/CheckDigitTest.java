package counterbench.labels.gs1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckDigitTest {
    /** GS1 General Specifications (Release 18) and the tests of GS1's Barcode Syntax Dictionary. */
    @ParameterizedTest
    @CsvSource({
        "629104150021,3",
        "890400021003,7",
        "730001100001,7",
        "12345678901234567,5",
        "1234567890123,1",
        "123456789012,8",
        "41600033610,8",
        "0234567,3"
    })
    void the_published_numbers_end_as_published(String digits, char check) {
        assertThat(CheckDigit.of(digits)).isEqualTo(check);
        assertThat(CheckDigit.holds(digits + check)).isTrue();
    }

    /** The example of GS1 General Specifications, figure 7.9.1 (from memory). */
    @Test
    void the_example_of_a_shipping_number_holds() {
        assertThat(CheckDigit.of("37610425002123456")).isEqualTo('9');
    }

    /** The tests of GS1's Barcode Syntax Dictionary. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "12345673",
                "416000336109",
                "1234567890129",
                "12345678901232",
                "123456789012345670",
                "1234 67890128",
                "12345A7890128",
                "",
                "7"
            })
    void what_must_fail_does(String number) {
        assertThat(CheckDigit.holds(number)).isFalse();
    }

    @Test
    void other_digits_than_ours_are_none() {
        assertThat(CheckDigit.holds("\u0661\u0662\u0663")).isFalse();
        assertThatThrownBy(() -> CheckDigit.of("12a")).isInstanceOf(IllegalArgumentException.class);
    }
}
