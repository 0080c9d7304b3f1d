package counterbench.claims;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClaimNumbersTest {
    @Test
    void the_next_number_goes_on_after_the_highest_as_wide_as_before() {
        assertThat(ClaimNumbers.next(List.of("CN-009", "CN-002"), "NORTH")).isEqualTo("CN-010");
        assertThat(ClaimNumbers.next(List.of("CN-999"), "NORTH")).isEqualTo("CN-1000");
    }

    @Test
    void of_two_series_the_longer_one_goes_on() {
        assertThat(ClaimNumbers.next(List.of("A-1", "B-7", "B-8"), "NORTH")).isEqualTo("B-9");
    }

    @Test
    void the_first_one_bears_the_name_of_the_site() {
        assertThat(ClaimNumbers.next(List.of(), "NORTH")).isEqualTo("NORTH-0001");
        assertThat(ClaimNumbers.next(List.of("first"), "NORTH")).isEqualTo("NORTH-0001");
    }

    @Test
    void a_claim_ages_in_steps_of_thirty_days() {
        assertThat(Ageing.of(30)).isEqualTo(Ageing.UP_TO_30);
        assertThat(Ageing.of(31)).isEqualTo(Ageing.UP_TO_60);
        assertThat(Ageing.of(90)).isEqualTo(Ageing.UP_TO_90);
        assertThat(Ageing.of(91)).isEqualTo(Ageing.OLDER);
    }
}
