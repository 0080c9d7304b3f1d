package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.completedJob;
import static counterbench.cores.CoreStory.job;
import static counterbench.cores.CoreStory.openJob;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreStory;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

/** Completed on 2026-03-05 and due within 30 days: the day 2026-04-04 is the last. */
class CoreOverdueTest {
    private static final CoreOverdue RULE = new CoreOverdue();
    private static final String OVER = "2026-04-05T00:00";

    private static CoreStory completed() {
        return removed().in(completedJob("2026-03-05T23:59"));
    }

    @Test
    void a_core_not_shipped_when_the_last_day_is_over_is_a_finding() {
        assertThat(completed().asOf(OVER).judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo("core C-1: due by 2026-04-04, not shipped");
                            assertThat(f.evidence()).isEqualTo("due by 2026-04-04, not shipped");
                            assertThat(f.month()).isEqualTo(YearMonth.of(2026, 3));
                        });
        assertThat(completed().asOf(OVER).changesBy(RULE)).isEmpty();
    }

    @Test
    void on_the_last_day_there_is_still_time_and_the_clock_will_tell() {
        CoreStory story = completed().asOf(at(OVER).minusNanos(1000));
        assertThat(story.judgedBy(RULE)).isEmpty();
        assertThat(story.changesBy(RULE)).contains(at(OVER));
    }

    @Test
    void a_core_shipped_on_the_last_day_is_in_time() {
        CoreStory story = completed().tell(SHIPPED, at(OVER).minusNanos(1000));
        assertThat(story.judgedBy(RULE)).isEmpty();
        assertThat(story.changesBy(RULE)).isEmpty();
    }

    @Test
    void a_core_shipped_after_the_last_day_counts_too() {
        assertThat(completed().tell(SHIPPED, OVER).judgedBy(RULE))
                .singleElement()
                .returns("due by 2026-04-04, shipped on 2026-04-05", Finding::evidence);
    }

    @Test
    void the_first_shipping_decides() {
        CoreStory story = completed().tell(SHIPPED, "2026-05-05T10:00");
        assertThat(story.tell(SHIPPED, "2026-03-20T10:00").judgedBy(RULE)).isEmpty();
    }

    @Test
    void an_acknowledgement_does_not_say_when_it_was_shipped() {
        assertThat(completed().tell(ACCEPTED, "2026-03-20T10:00").judgedBy(RULE)).hasSize(1);
    }

    @Test
    void only_cores_of_completed_jobs_are_judged() {
        assertThat(removed().in(openJob()).judgedBy(RULE)).isEmpty();
        assertThat(removed().in(null).judgedBy(RULE)).isEmpty();
        assertThat(removed().in(job(at("2026-03-05T10:00"), Outcome.ABANDONED)).judgedBy(RULE))
                .isEmpty();
    }

    @Test
    void a_core_without_a_time_of_return_is_not_judged() {
        assertThat(completed().under(terms("12", 5, null, null)).judgedBy(RULE)).isEmpty();
        assertThat(completed().under(null).judgedBy(RULE)).isEmpty();
    }

    @Test
    void the_last_day_for_shipping_is_known_for_the_rack() {
        assertThat(completed().facts().shipBy()).contains(LocalDate.parse("2026-04-04"));
    }
}
