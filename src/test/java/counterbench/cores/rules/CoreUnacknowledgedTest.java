package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.REJECTED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreStory;
import org.junit.jupiter.api.Test;

/** Shipped on 2026-03-05 with 21 days of patience: the day 2026-03-26 is the last. */
class CoreUnacknowledgedTest {
    private static final CoreUnacknowledged RULE = new CoreUnacknowledged();
    private static final String OVER = "2026-03-27T00:00";

    private static CoreStory shipped() {
        return removed().tell(SHIPPED, "2026-03-05T23:30");
    }

    @Test
    void a_core_without_a_word_when_patience_is_over_is_a_finding() {
        assertThat(shipped().asOf(OVER).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "core C-1: shipped on 2026-03-05, not acknowledged by"
                                                    + " 2026-03-26");
                            assertThat(f.evidence())
                                    .isEqualTo("shipped on 2026-03-05, patience until 2026-03-26");
                        });
    }

    @Test
    void on_the_last_day_patience_holds_and_the_clock_will_tell() {
        CoreStory story = shipped().asOf(at(OVER).minusNanos(1000));
        assertThat(story.judgedBy(RULE)).isEmpty();
        assertThat(story.changesBy(RULE)).contains(at(OVER));
    }

    @Test
    void patience_starts_at_the_first_shipping() {
        CoreStory story = shipped().tell(SHIPPED, "2026-03-20T10:00");
        assertThat(story.asOf(OVER).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void any_word_of_the_return_centre_acknowledges() {
        assertThat(shipped().tell(RECEIVED, "2026-06-01T10:00").judgedBy(RULE)).isEmpty();
        assertThat(shipped().tell(REJECTED, "2026-03-10T10:00").judgedBy(RULE)).isEmpty();
        CoreStory row = shipped().answered("S-1", RECEIVED, "C-1", null, "2026-03-10T10:00");
        assertThat(row.judgedBy(RULE)).isEmpty();
        assertThat(row.changesBy(RULE)).isEmpty();
    }

    @Test
    void a_core_that_was_not_shipped_is_not_waited_for() {
        assertThat(removed().judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_core_without_terms_is_judged_all_the_same() {
        assertThat(shipped().under(null).judgedBy(RULE)).hasSize(1);
    }
}
