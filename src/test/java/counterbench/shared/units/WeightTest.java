package counterbench.shared.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeightTest {
    private static Weight weight(String text) {
        return Weight.parse(text).orElseThrow();
    }

    /** 1 lb is 0.453 592 37 kg exactly: NIST SP 811 (2008), appendix B.8. */
    @Test
    void a_pound_is_so_many_kilograms_to_the_last_digit() {
        assertThat(weight("1 lb").kilograms()).isEqualByComparingTo("0.45359237");
        assertThat(weight("35.7 lb").kilograms()).isEqualByComparingTo("16.193247609");
    }

    @Test
    void weights_of_one_unit_add_up_in_it_and_others_in_kilograms() {
        assertThat(Weight.sum(List.of(weight("7.4 kg"), weight("8.8kg"))))
                .hasToString("Optional[16.2 kg]");
        assertThat(Weight.sum(List.of(weight("1 lb"), weight("2 lb"))))
                .hasToString("Optional[3 lb]");
        Weight both = Weight.sum(List.of(weight("1 lb"), weight("1 kg"))).orElseThrow();
        assertThat(both.kilograms()).isEqualByComparingTo("1.45359237");
        assertThat(Weight.sum(List.of())).isEmpty();
    }

    @Test
    void what_was_converted_is_shown_to_the_gram_and_what_was_typed_as_it_was() {
        assertThat(Weight.sum(List.of(weight("1 lb"), weight("1 kg"))))
                .hasToString("Optional[1.454 kg]");
        assertThat(Weight.sum(List.of(weight("0.000001 kg"), weight("2.50 kg"))))
                .hasToString("Optional[2.500001 kg]");
    }

    @Test
    void one_exceeds_another_by_the_last_digit_only() {
        assertThat(weight("0.453592 kg").exceeds(weight("1 lb"))).isFalse();
        assertThat(weight("0.453593 kg").exceeds(weight("1 lb"))).isTrue();
        assertThat(weight("10 kg").exceeds(weight("10.000 kg"))).isFalse();
    }

    @Test
    void what_is_no_weight_is_none() {
        for (String text : List.of("", "12", "kg", "0 kg", "-1 kg", "1,5 kg", "1 oz", "1 kg kg")) {
            assertThat(Weight.parse(text)).as(text).isEmpty();
        }
        assertThat(Weight.of(new BigDecimal("3"), null)).isEqualTo(Optional.empty());
    }
}
