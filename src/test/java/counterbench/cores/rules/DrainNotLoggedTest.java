package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.DRAIN_BEGUN;
import static counterbench.cores.CoreEvent.Kind.DRAIN_ENDED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreStory;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

class DrainNotLoggedTest {
    private static final DrainNotLogged RULE = new DrainNotLogged();
    private static final String LATER = "2026-03-06T10:00";

    @Test
    void a_core_packed_without_a_drain_period_is_a_finding() {
        assertThat(removed().packed("replacement", LATER).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "core C-1: no drain period is logged, 12 min required");
                            assertThat(f.evidence())
                                    .isEqualTo("required 12 min, counted 0, after plugging 0");
                            assertThat(f.month()).isNull();
                        });
    }

    @Test
    void a_core_shipped_or_acknowledged_is_judged_alike() {
        assertThat(removed().tell(SHIPPED, LATER).judgedBy(RULE)).hasSize(1);
        assertThat(removed().tell(RECEIVED, LATER).judgedBy(RULE)).hasSize(1);
        assertThat(removed().answered("S-1", RECEIVED, "C-1", null, LATER).judgedBy(RULE))
                .hasSize(1);
    }

    @Test
    void a_core_still_on_the_rack_is_not_judged_yet() {
        assertThat(removed().plugged(5, LATER).judgedBy(RULE)).isEmpty();
    }

    @Test
    void any_ended_period_however_short_is_logged() {
        CoreStory story = removed().drained("2026-03-05T09:10", "2026-03-05T09:11");
        assertThat(story.packed("replacement", LATER).judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_begin_without_an_end_and_an_end_without_a_begin_are_no_period() {
        assertThat(removed().tell(DRAIN_BEGUN, LATER).tell(SHIPPED, LATER).judgedBy(RULE))
                .hasSize(1);
        assertThat(removed().tell(DRAIN_ENDED, LATER).tell(SHIPPED, LATER).judgedBy(RULE))
                .hasSize(1);
    }

    @Test
    void a_period_that_ended_after_plugging_does_not_count_and_is_told() {
        CoreStory story =
                removed()
                        .plugged(5, "2026-03-05T09:10")
                        .drained("2026-03-05T09:00", "2026-03-05T09:11")
                        .packed("replacement", LATER);
        assertThat(story.judgedBy(RULE))
                .singleElement()
                .returns("required 12 min, counted 0, after plugging 1", Finding::evidence);
    }

    @Test
    void terms_that_want_no_drain_or_no_core_are_not_broken() {
        CoreStory story = removed().packed("replacement", LATER);
        assertThat(story.under(terms("0", 5, null, null)).judgedBy(RULE)).isEmpty();
        assertThat(story.under(null).judgedBy(RULE)).isEmpty();
    }

    @Test
    void the_month_is_that_in_which_its_job_ended_however_it_did() {
        CoreStory story = removed().packed("replacement", LATER);
        assertThat(story.in(CoreStory.completedJob("2026-03-31T23:59")).judgedBy(RULE))
                .singleElement()
                .returns(YearMonth.of(2026, 3), Finding::month);
        assertThat(story.in(CoreStory.job(CoreStory.at(LATER), Outcome.ABANDONED)).judgedBy(RULE))
                .singleElement()
                .returns(YearMonth.of(2026, 3), Finding::month);
        assertThat(story.in(null).judgedBy(RULE)).singleElement().returns(null, Finding::campaign);
    }
}
