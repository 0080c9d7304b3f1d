package counterbench.cores.rules;

import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreEvent.Kind;
import counterbench.cores.CoreStory;
import counterbench.judgement.Finding;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrainShortTest {
    private static final DrainShort RULE = new DrainShort();
    private static final String LATER = "2026-03-12T10:00";

    private static CoreStory drained(Instant from, Instant to) {
        return removed()
                .tell(Kind.DRAIN_BEGUN, from)
                .tell(Kind.DRAIN_ENDED, to)
                .packed("replacement", LATER);
    }

    /** A drain period of ten minutes: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"599, 1", "600, 0", "601, 0"})
    void exactly_ten_minutes_are_enough_and_a_second_less_is_not(int seconds, int findings) {
        Instant from = at("2026-03-05T09:10");
        CoreStory story = drained(from, from.plusSeconds(seconds)).under(terms("10", 5, null, 30));
        assertThat(story.judgedBy(RULE)).hasSize(findings);
    }

    @Test
    void the_longest_period_is_named_in_full_seconds_and_never_longer_than_it_was() {
        Instant from = at("2026-03-05T09:10");
        assertThat(drained(from, from.plusMillis(719_500)).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "core C-1: the longest drain period is 11 min 59 s,"
                                                    + " 12 min required");
                            assertThat(f.evidence())
                                    .isEqualTo("required 12 min, longest 11 min 59 s");
                        });
    }

    @Test
    void parts_of_a_minute_are_compared_exactly() {
        Instant from = at("2026-03-05T09:10");
        CoreStory story = drained(from, from.plusSeconds(90));
        assertThat(story.under(terms("1.5", 5, null, 30)).judgedBy(RULE)).isEmpty();
        assertThat(story.under(terms("1.501", 5, null, 30)).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void clocks_that_go_forward_do_not_lengthen_a_drain() {
        assertThat(drained(at("2026-03-08T01:55"), at("2026-03-08T03:05")).judgedBy(RULE))
                .singleElement()
                .returns("required 12 min, longest 10 min", Finding::evidence);
    }

    @Test
    void clocks_that_go_back_do_not_shorten_a_drain() {
        Instant from = Instant.parse("2026-11-01T06:55:00Z");
        assertThat(drained(from, Instant.parse("2026-11-01T07:07:00Z")).judgedBy(RULE)).isEmpty();
        assertThat(drained(from, Instant.parse("2026-11-01T07:06:59Z")).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void two_short_periods_that_touch_are_one_long_one() {
        CoreStory touching =
                removed()
                        .drained("2026-03-05T09:00", "2026-03-05T09:06")
                        .drained("2026-03-05T09:06", "2026-03-05T09:12")
                        .packed("replacement", LATER);
        CoreStory apart =
                removed()
                        .drained("2026-03-05T09:00", "2026-03-05T09:06")
                        .drained("2026-03-05T09:07", "2026-03-05T09:13")
                        .packed("replacement", LATER);
        assertThat(touching.judgedBy(RULE)).isEmpty();
        assertThat(apart.judgedBy(RULE)).hasSize(1);
    }

    @Test
    void a_core_without_any_counting_period_comes_under_drain_not_logged_only() {
        assertThat(removed().packed("replacement", LATER).judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_core_still_on_the_rack_is_not_judged_yet() {
        assertThat(removed().drained("2026-03-05T09:00", "2026-03-05T09:06").judgedBy(RULE))
                .isEmpty();
    }

    @Test
    void a_core_without_terms_is_not_judged() {
        Instant from = at("2026-03-05T09:10");
        assertThat(drained(from, from.plusSeconds(1)).under(null).judgedBy(RULE)).isEmpty();
    }
}
