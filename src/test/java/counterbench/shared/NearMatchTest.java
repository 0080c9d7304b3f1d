package counterbench.shared;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearMatchTest {
    /**
     * CA/ABC, CA/AC and damerau/aderua: values published for the restricted edit distance;
     * kitten/sitting from memory.
     */
    @ParameterizedTest
    @CsvSource({"CA, ABC, 3", "CA, AC, 1", "kitten, sitting, 3", "damerau, aderua, 3", "'', ab, 2"})
    void edits_are_counted_as_published(String a, String b, int edits) {
        assertThat(NearMatch.edits(a, b)).isEqualTo(edits);
        assertThat(NearMatch.edits(b, a)).isEqualTo(edits);
    }

    @Test
    void a_slip_of_the_hand_finds_its_word() {
        List<String> known = List.of("torque", "within", "unit");
        assertThat(NearMatch.of("tourqe", known)).contains("torque");
        assertThat(NearMatch.of("Within ", known)).contains("within");
        assertThat(NearMatch.of("untis", known)).isEmpty();
    }

    @Test
    void a_letter_that_is_taken_for_a_figure_is_nearer_than_another_figure() {
        List<String> known = List.of("NC-0006", "NC-0O76", "NC-0075");
        assertThat(NearMatch.of("NC-0076", known)).contains("NC-0O76");
        assertThat(NearMatch.of("NC-0O75", known)).contains("NC-0075");
    }

    @Test
    void another_word_finds_none() {
        assertThat(NearMatch.of("colour", List.of("torque", "within"))).isEmpty();
        assertThat(NearMatch.of("colour", List.of())).isEmpty();
    }
}
