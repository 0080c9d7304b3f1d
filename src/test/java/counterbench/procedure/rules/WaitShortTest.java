package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaitShortTest {
    private final WaitShort rule = new WaitShort();

    // A hand pump is worked for at least 30 seconds: common practice, no source.
    @ParameterizedTest
    @CsvSource({"0.499, true", "0.5, false", "0.50, false", "2, false", "0, true"})
    void the_marked_time_may_be_the_step_s_own(String minutes, boolean found) {
        assertThat(purge().waited("purge", minutes).findings(rule)).hasSize(found ? 1 : 0);
    }

    @Test
    void the_latest_mark_counts() {
        assertThat(
                        purge().waited("purge", "0.2")
                                .at("2026-03-05T08:40")
                                .waited("purge", "0.5")
                                .findings(rule))
                .isEmpty();
        assertThat(purge().waited("purge", "0.5").waited("purge", "0.2").evidence(rule))
                .containsExactly("waited 0.2 minutes, wanted 0.5");
    }

    @Test
    void a_wait_without_a_mark_is_missing_and_not_short() {
        assertThat(purge().findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(purge().waited("purge", "0").on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static ProcedureCase purge() {
        return new ProcedureCase(StepDraft.pause("purge", "0.5"));
    }
}
