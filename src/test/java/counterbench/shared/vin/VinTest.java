package counterbench.shared.vin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.vin.VinFault.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VinTest {
    /**
     * The first: the worked example of 49 CFR 565.15(c), sum 411, remainder 4. The others:
     * published check values, sum 351 with remainder 10 written X, and sum 89 with remainder 1.
     */
    @ParameterizedTest
    @ValueSource(strings = {"1G4AH59H45G118341", "1M8GDM9AXKP042788", "11111111111111111"})
    void a_published_number_is_right(String vin) {
        assertThat(Vin.faults(vin, true)).isEmpty();
    }

    /** The worked example with one character changed: sum 408, check digit 1. */
    @Test
    void a_changed_character_is_found() {
        assertThat(Vin.faults("1G4AH59H45G118331", true))
                .containsExactly(
                        new VinFault(
                                Reason.CHECK_DIGIT,
                                "its check digit is 4, its other characters give 1"));
        assertThat(Vin.expectedCheckDigit("1G4AH59H45G118331")).isEqualTo('1');
    }

    @Test
    void a_wrong_check_digit_is_let_through_where_the_pack_says_so() {
        assertThat(Vin.faults("1G4AH59H45G118331", false)).isEmpty();
    }

    @Test
    void letter_case_and_spaces_do_not_count() {
        assertThat(Vin.faults(" 1g4ah 59h45g 118341 ", true)).isEmpty();
        assertThat(Vin.compared(" 1g4ah 59h45g\t118341 ")).isEqualTo("1G4AH59H45G118341");
    }

    /**
     * Its form is right, sum 0 and check digit 0; the campaign's list says that it is no vehicle.
     */
    @Test
    void all_zeros_have_a_right_form() {
        assertThat(Vin.faults("00000000000000000", true)).isEmpty();
    }

    /** Forbidden letters and length: 49 CFR 565.13 and 565.15. */
    @ParameterizedTest
    @CsvSource({
        "IG4AH59H45G118341, FORBIDDEN_LETTER, no VIN has the letter I",
        "1G4AH59H45G11834o, FORBIDDEN_LETTER, no VIN has the letter O",
        "1G4AH59H45Q118341, FORBIDDEN_LETTER, no VIN has the letter Q",
        "1G4AH59H45G11834, LENGTH, 'it has 16 characters, not 17'",
        "1G4AH59H45G1183411, LENGTH, 'it has 18 characters, not 17'",
        "'', LENGTH, 'it has 0 characters, not 17'",
        "1G4AH59H45G11834-, OTHER_CHARACTER, '\"-\" is no letter A to Z or digit'",
        "1G4AH59H45G11834Ä, OTHER_CHARACTER, '\"Ä\" is no letter A to Z or digit'",
        "'1G4AH59H45G11834\u0007', OTHER_CHARACTER, '\"\\u0007\" is no letter A to Z or digit'",
        "1G4AH59H45G11834\u0664, OTHER_CHARACTER, '\"\u0664\" is no letter A to Z or digit'",
    })
    void a_fault_has_its_reason(String vin, Reason reason, String because) {
        assertThat(Vin.faults(vin, true)).containsExactly(new VinFault(reason, because));
    }

    @Test
    void every_fault_of_form_is_told_and_each_once() {
        assertThat(Vin.faults("O-O-I", true))
                .extracting(VinFault::reason)
                .containsExactly(
                        Reason.LENGTH,
                        Reason.FORBIDDEN_LETTER,
                        Reason.FORBIDDEN_LETTER,
                        Reason.OTHER_CHARACTER);
    }

    @Test
    void a_number_of_wrong_form_has_no_check_digit() {
        assertThatThrownBy(() -> Vin.expectedCheckDigit("123"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
