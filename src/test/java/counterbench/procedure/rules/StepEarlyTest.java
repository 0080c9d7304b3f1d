package counterbench.procedure.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepEarlyTest {
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private final StepEarly rule = new StepEarly();

    @ParameterizedTest
    @CsvSource({
        "2026-03-05T08:59, true",
        "2026-03-05T09:00, false",
        "2026-03-05T09:01, false",
    })
    void a_step_comes_no_sooner_than_the_one_before_it_and_at_its_time_is_in_order(
            String marked, boolean early) {
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("cold"), StepDraft.sign("clamp").after("cold"))
                        .at("2026-03-05T09:00")
                        .mark("cold")
                        .at(marked)
                        .mark("clamp");

        assertThat(job.findings(rule)).hasSize(early ? 1 : 0);
    }

    @Test
    void the_finding_names_both_moments() {
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("cold"), StepDraft.sign("clamp").after("cold"))
                        .mark("clamp")
                        .at("2026-03-05T09:00")
                        .mark("cold");

        assertThat(job.steps(rule)).containsExactly("clamp");
        assertThat(job.evidence(rule))
                .containsExactly(
                        "marked at 2026-03-05T14:30:00Z, but cold complete at"
                                + " 2026-03-05T15:00:00Z");
        assertThat(job.findings(rule))
                .extracting(Finding::message)
                .singleElement()
                .asString()
                .endsWith(
                        "step clamp: marked at 2026-03-05 08:30, but cold complete at 2026-03-05"
                                + " 09:00");
    }

    @Test
    void the_first_mark_of_both_counts() {
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("cold"), StepDraft.sign("clamp").after("cold"))
                        .at("2026-03-05T09:00")
                        .mark("cold")
                        .at("2026-03-05T09:10")
                        .mark("clamp")
                        .at("2026-03-05T09:20")
                        .mark("cold");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void a_torque_step_is_complete_when_its_last_fastener_is_first_read() {
        ProcedureCase tooEarly =
                banjoAfterClamp()
                        .at("2026-03-05T09:00")
                        .fastener("clamp", 2, "41")
                        .at("2026-03-05T09:10")
                        .mark("banjo")
                        .at("2026-03-05T09:11")
                        .fastener("clamp", 1, "41");
        ProcedureCase again =
                banjoAfterClamp()
                        .at("2026-03-05T09:00")
                        .fastener("clamp", 1, "41")
                        .fastener("clamp", 2, "41")
                        .at("2026-03-05T09:10")
                        .mark("banjo")
                        .at("2026-03-05T09:11")
                        .fastener("clamp", 1, "42");

        assertThat(tooEarly.steps(rule)).containsExactly("banjo");
        assertThat(again.findings(rule)).isEmpty();
    }

    @Test
    void a_step_before_that_was_never_complete_is_no_hindrance() {
        assertThat(banjoAfterClamp().mark("banjo").findings(rule)).isEmpty();
        assertThat(
                        banjoAfterClamp()
                                .mark("banjo")
                                .at("2026-03-05T09:00")
                                .fastener("clamp", 1, "41")
                                .fastener("clamp", 1, "42")
                                .findings(rule))
                .isEmpty();
    }

    @Test
    void a_step_before_that_does_not_surely_apply_is_no_hindrance() {
        ProcedureCase job =
                new ProcedureCase(
                                StepDraft.sign("cold").when(AUTOMATIC),
                                StepDraft.sign("clamp").after("cold"))
                        .mark("clamp")
                        .at("2026-03-05T09:00")
                        .mark("cold");

        assertThat(job.findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "manual").findings(rule)).isEmpty();
        assertThat(job.vehicle("transmission", "automatic").findings(rule)).hasSize(1);
    }

    @Test
    void one_finding_names_every_step_that_should_have_come_first() {
        ProcedureCase job =
                new ProcedureCase(
                                StepDraft.sign("a"),
                                StepDraft.sign("b"),
                                StepDraft.sign("c").after("a", "b"))
                        .mark("c")
                        .at("2026-03-05T09:00")
                        .mark("a")
                        .mark("b");

        assertThat(job.findings(rule)).hasSize(1);
        assertThat(job.evidence(rule).get(0)).contains("a complete", "b complete");
    }

    @Test
    void only_completed_jobs_are_judged() {
        ProcedureCase job =
                new ProcedureCase(StepDraft.sign("cold"), StepDraft.sign("clamp").after("cold"))
                        .mark("clamp")
                        .at("2026-03-05T09:00")
                        .mark("cold");

        assertThat(job.on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static ProcedureCase banjoAfterClamp() {
        return new ProcedureCase(
                StepDraft.torque("clamp", 2, "36.9", "41", "45.1", "N·m"),
                StepDraft.sign("banjo").after("clamp"));
    }
}
