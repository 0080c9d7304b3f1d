package counterbench.labels.gs1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SsccTest {
    private static final CompanyPrefix PREFIX = new CompanyPrefix("7610425");

    /** The example of GS1 General Specifications, figure 7.9.1 (from memory). */
    @Test
    void the_published_example_comes_out() {
        Sscc sscc = Sscc.of(PREFIX, 3, 2_123_456);
        assertThat(sscc.digits()).isEqualTo("376104250021234569");
        assertThat(sscc.extension()).isEqualTo(3);
        assertThat(sscc.serial(PREFIX)).isEqualTo(2_123_456);
    }

    /** An SSCC of GS1's own Barcode Syntax Engine, and the same with a wrong check digit. */
    @Test
    void another_published_number_comes_out_and_not_with_another_check_digit() {
        assertThat(Sscc.of(new CompanyPrefix("2345678"), 1, 901_234_567).digits())
                .isEqualTo("123456789012345675");
        assertThatThrownBy(() -> new Sscc("123456789012345670"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_longer_prefix_leaves_fewer_serials() {
        assertThat(Sscc.serials(PREFIX)).isEqualTo(1_000_000_000);
        assertThat(Sscc.serials(new CompanyPrefix("7610425123"))).isEqualTo(1_000_000);
        assertThat(Sscc.of(new CompanyPrefix("7610425123"), 0, 999_999).digits())
                .startsWith("07610425123999999")
                .hasSize(18);
    }

    @Test
    void what_does_not_fit_is_none() {
        assertThatThrownBy(() -> Sscc.of(PREFIX, 10, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Sscc.of(PREFIX, 0, 1_000_000_000))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Sscc("376104250021234568"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "123456", "12345678901", "761042x", "761 0425"})
    void a_company_prefix_has_seven_to_ten_digits(String digits) {
        assertThat(CompanyPrefix.faultOf(digits)).isPresent();
    }
}
