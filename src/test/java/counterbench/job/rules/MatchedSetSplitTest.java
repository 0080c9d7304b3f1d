package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

class MatchedSetSplitTest {
    private static final String PUMP = "QM-4471";
    private static final String BOLT = "QM-4472";

    private final MatchedSetSplit rule = new MatchedSetSplit();

    @Test
    void pump_and_bolt_of_one_kit_belong_together() {
        assertThat(twoKits().fittedFrom("K-1", PUMP).fittedFrom("K-1", BOLT).findings(rule))
                .isEmpty();
    }

    @Test
    void pump_and_bolt_of_two_kits_are_split_once_for_the_job() {
        List<Finding> findings =
                twoKits().fittedFrom("K-1", PUMP).fittedFrom("K-2", BOLT).findings(rule);

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).subject().part()).isNull();
        assertThat(findings.get(0).evidence())
                .isEqualTo("QM-4471 from kit K-1; QM-4472 from kit K-2");
    }

    @Test
    void a_row_without_kit_comes_from_the_only_kit() {
        HardwareCase job = oneKit().fitted(PUMP, "1").fittedFrom("K-1", BOLT);

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void with_two_kits_a_row_without_kit_comes_from_none() {
        HardwareCase job = twoKits().fitted(PUMP, "1").fittedFrom("K-1", BOLT);

        assertThat(job.findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("QM-4471 from no kit; QM-4472 from kit K-1");
    }

    @Test
    void a_single_matched_part_from_no_kit_is_found() {
        assertThat(twoKits().fitted(PUMP, "1").findings(rule)).hasSize(1);
    }

    @Test
    void a_part_of_which_nothing_new_is_there_is_not_compared() {
        HardwareCase job = twoKits().fittedFrom("K-1", PUMP).refitted(BOLT, "1");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void two_whole_sets_on_one_job_are_in_order() {
        HardwareCase job =
                twoKits()
                        .fittedFrom("K-1", PUMP)
                        .fittedFrom("K-1", BOLT)
                        .fittedFrom("K-2", PUMP)
                        .fittedFrom("K-2", BOLT);

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void a_part_that_was_taken_off_is_no_longer_part_of_the_set() {
        HardwareCase job =
                twoKits()
                        .fittedFrom("K-1", PUMP)
                        .fittedFrom("K-2", BOLT)
                        .newTakenOff(BOLT, "1", "K-2")
                        .fittedFrom("K-1", BOLT);

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void where_the_row_does_not_tell_the_earliest_fitted_was_taken_off() {
        HardwareCase job =
                twoKits()
                        .fittedFrom("K-2", BOLT)
                        .fittedFrom("K-1", BOLT)
                        .fittedFrom("K-1", PUMP)
                        .newTakenOff(BOLT, "1", null);

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void a_named_kit_that_gave_nothing_falls_back_to_the_earliest_fitted() {
        HardwareCase job =
                twoKits()
                        .fittedFrom("K-2", BOLT)
                        .fittedFrom("K-1", BOLT)
                        .fittedFrom("K-1", PUMP)
                        .newTakenOff(BOLT, "1", "K-9");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void what_was_fitted_after_completion_does_not_count() {
        HardwareCase job =
                twoKits().fittedFrom("K-1", PUMP).at("2026-03-05T15:01").fittedFrom("K-2", BOLT);

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void parts_of_two_kits_that_both_belong_on_the_vehicle_are_two_sets() {
        PackDraft pack =
                new PackDraft()
                        .kit("A", LineDraft.pieces("QM-1", 1).matched())
                        .kit("B", LineDraft.pieces("QM-2", 1).matched());
        HardwareCase job =
                new HardwareCase(pack).fittedFrom("K-1", "QM-1").fittedFrom("K-2", "QM-2");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void matched_parts_that_the_vehicle_does_not_surely_need_are_not_judged() {
        PackDraft pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces(PUMP, 1).matched(),
                                LineDraft.pieces(BOLT, 1)
                                        .matched()
                                        .when("transmission", "automatic"));
        HardwareCase unlisted =
                new HardwareCase(pack).fittedFrom("K-1", PUMP).fittedFrom("K-2", BOLT);

        assertThat(unlisted.findings(rule)).isEmpty();
        assertThat(unlisted.vehicle("transmission", "automatic").findings(rule)).hasSize(1);
    }

    @Test
    void a_pack_without_matched_parts_has_no_such_rule() {
        HardwareCase job = new HardwareCase(new PackDraft().kit("K", LineDraft.pieces(PUMP, 1)));

        assertThat(job.fitted(PUMP, "1").findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        HardwareCase job = twoKits().fittedFrom("K-1", PUMP).fittedFrom("K-2", BOLT);

        assertThat(job.on(TestJobs.abandoned()).findings(rule)).isEmpty();
    }

    private static HardwareCase oneKit() {
        PackDraft pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces(PUMP, 1).matched(),
                                LineDraft.pieces(BOLT, 1).matched().singleUse());
        return new HardwareCase(pack).received("K-1", null).issued("K-1");
    }

    private static HardwareCase twoKits() {
        return oneKit().received("K-2", null).issued("K-2");
    }
}
