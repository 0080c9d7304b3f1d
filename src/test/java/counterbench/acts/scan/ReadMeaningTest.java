package counterbench.acts.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.acts.bench.Measured;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a line stands for at a bench. */
class ReadMeaningTest {
    private final BenchStory story = new BenchStory().issued("K-1").removed("C-1", "7P1");

    private Meaning read(String line) {
        return new ReadMeaning(story.bench(), BenchStory.YEAR).read(line);
    }

    private static Measured measured(String value, @Nullable String unit) {
        return new Measured(new BigDecimal(value), unit);
    }

    @Test
    void a_word_of_the_loop_goes_before_everything_in_any_letter_case() {
        assertThat(read("drain end")).isEqualTo(new Meaning.Command(Word.DRAIN, "end"));
        assertThat(read(" DONE ")).isEqualTo(new Meaning.Command(Word.DONE, ""));
        assertThat(read("?")).isEqualTo(new Meaning.Command(Word.HELP, ""));
    }

    @Test
    void an_empty_line_means_the_plain_step_that_is_next() {
        assertThat(read("")).isEqualTo(new Meaning.Nothing());
        assertThat(read(" \t")).isEqualTo(new Meaning.Nothing());
    }

    @Test
    void a_number_is_a_reading_perhaps_with_its_unit() {
        assertThat(read("47.4")).isEqualTo(new Meaning.Reading(measured("47.4", null)));
        assertThat(read("31 lbf·ft")).isEqualTo(new Meaning.Reading(measured("31", "lbf·ft")));
    }

    @Test
    void what_is_known_by_name_is_that() {
        assertThat(read("K-1")).isEqualTo(new Meaning.Kit("K-1"));
        assertThat(read("K-9")).isEqualTo(new Meaning.Kit("K-9"));
        assertThat(read("C-1")).isEqualTo(new Meaning.Core("C-1"));
        assertThat(read("W-2")).isEqualTo(new Meaning.Instrument("W-2"));
        assertThat(read("J-7")).isEqualTo(new Meaning.OtherJob("J-7"));
        assertThat(read("QM-4473")).isEqualTo(new Meaning.Part("QM-4473", null, null));
        assertThat(read("QM-4473 2"))
                .isEqualTo(new Meaning.Part("QM-4473", Quantity.of("2"), null));
        assertThat(read("QM-4475 3.2mL"))
                .isEqualTo(new Meaning.Part("QM-4475", Quantity.of("3.2"), null));
    }

    @Test
    void a_step_may_bring_its_readings() {
        assertThat(read("cold")).isEqualTo(new Meaning.OfStep("cold", List.of()));
        assertThat(read("clamp 41 30 lbf·ft"))
                .isEqualTo(
                        new Meaning.OfStep(
                                "clamp", List.of(measured("41", null), measured("30", "lbf·ft"))));
    }

    @Test
    void a_label_says_itself_what_it_is() {
        assertThat(read("(240)QM-4470-K(21)K-55")).isEqualTo(new Meaning.Kit("K-55"));
        assertThat(read("(240)QM-4473(10)L-7")).isEqualTo(new Meaning.Part("QM-4473", null, "L-7"));
        assertThat(read("]d292C-88")).isEqualTo(new Meaning.Core("C-88"));
        assertThat(read("(91)J-8")).isEqualTo(new Meaning.OtherJob("J-8"));
    }

    @Test
    void a_label_from_a_scanner_without_prefix_counts_only_if_it_names_what_is_known() {
        assertThat(read("240QM-4473")).isEqualTo(new Meaning.Part("QM-4473", null, null));
        assertThatThrownBy(() -> read("240QM-9999"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("that is known here");
    }

    @Test
    void what_nobody_knows_is_refused_with_what_it_may_be() {
        assertThatThrownBy(() -> read("QM-4437")).hasMessageEndingWith("did you mean QM-4473?");
        assertThatThrownBy(() -> read("wehre")).hasMessageEndingWith("did you mean where?");
        assertThatThrownBy(() -> read("xyzzy")).hasMessageEndingWith("or type help");
        assertThatThrownBy(() -> read("job show J-7"))
                .hasMessageEndingWith("commands of the shell come after quit");
    }

    @Test
    void kits_and_cores_that_a_line_may_name_are_known_before_it_is_read() {
        assertThat(ReadMeaning.names("put-back (240)QM-4470-K(21)K-55", BenchStory.YEAR))
                .contains("put-back", "K-55");
        assertThat(ReadMeaning.names("]d292C-88", BenchStory.YEAR)).contains("C-88");
        assertThat(ReadMeaning.names("  ", BenchStory.YEAR)).isEmpty();
    }
}
