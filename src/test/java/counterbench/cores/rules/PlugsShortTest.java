package counterbench.cores.rules;

import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreStory;
import org.junit.jupiter.api.Test;

class PlugsShortTest {
    private static final PlugsShort RULE = new PlugsShort();
    private static final String PLUGGED = "2026-03-05T10:00";
    private static final String PACKED = "2026-03-06T10:00";

    @Test
    void fewer_plugs_than_required_are_a_finding() {
        assertThat(removed().plugged(4, PLUGGED).packed(null, PACKED).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message()).isEqualTo("core C-1: 4 of 5 plugs are logged");
                            assertThat(f.evidence()).isEqualTo("required 5, logged 4");
                        });
    }

    @Test
    void plugs_taken_out_again_do_not_count() {
        CoreStory story = removed().plugged(5, PLUGGED).unplugged(1, "2026-03-05T10:05");
        assertThat(story.packed(null, PACKED).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void exactly_the_plugs_required_are_enough() {
        CoreStory story = removed().plugged(3, PLUGGED).plugged(2, PLUGGED).packed(null, PACKED);
        assertThat(story.judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_core_still_on_the_rack_or_without_terms_is_not_judged() {
        assertThat(removed().plugged(4, PLUGGED).judgedBy(RULE)).isEmpty();
        assertThat(removed().packed(null, PACKED).under(null).judgedBy(RULE)).isEmpty();
        assertThat(removed().packed(null, PACKED).under(terms("12", 0, null, 30)).judgedBy(RULE))
                .isEmpty();
    }
}
