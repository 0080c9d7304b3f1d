package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

class CorePackagingTest {
    private static final CorePackaging RULE = new CorePackaging();
    private static final String FIRST = "2026-03-05T10:00";
    private static final String THEN = "2026-03-06T10:00";

    @Test
    void a_core_packed_otherwise_is_a_finding() {
        assertThat(removed().packed("carton", FIRST).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "core C-1: packaging is \"carton\", \"replacement\""
                                                    + " required");
                            assertThat(f.evidence())
                                    .isEqualTo("required \"replacement\", packed \"carton\"");
                        });
    }

    @Test
    void not_saying_the_packaging_is_a_finding() {
        assertThat(removed().packed(null, FIRST).judgedBy(RULE))
                .singleElement()
                .returns("required \"replacement\", packed not said", Finding::evidence);
    }

    @Test
    void the_last_packing_decides() {
        assertThat(removed().packed("carton", FIRST).packed("replacement", THEN).judgedBy(RULE))
                .isEmpty();
        assertThat(removed().packed("replacement", FIRST).packed("carton", THEN).judgedBy(RULE))
                .hasSize(1);
    }

    @Test
    void a_core_that_was_never_packed_is_not_judged_even_when_shipped() {
        assertThat(removed().tell(SHIPPED, THEN).judgedBy(RULE)).isEmpty();
    }

    @Test
    void terms_that_say_no_packaging_and_no_terms_are_not_broken() {
        assertThat(removed().packed(null, FIRST).under(terms("12", 5, null, 30)).judgedBy(RULE))
                .isEmpty();
        assertThat(removed().packed(null, FIRST).under(null).judgedBy(RULE)).isEmpty();
    }
}
