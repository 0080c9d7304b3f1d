package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.JudgedJob;
import counterbench.job.TestJobs;
import counterbench.judgement.Rule;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReusedHardwareTest {
    private final ReusedHardware rule = new ReusedHardware();

    @Test
    void an_old_single_use_part_on_the_vehicle_is_found_with_its_numbers() {
        var findings = washers().fitted("QM-4473", "3").refitted("QM-4473", "1").findings(rule);

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).rule()).isEqualTo(Rule.REUSED_HARDWARE);
        assertThat(findings.get(0).subject().part()).isEqualTo("QM-4473");
        assertThat(findings.get(0).message())
                .isEqualTo("job J-118: 3 of 4 QM-4473 are new, 1 was refitted");
        assertThat(findings.get(0).evidence()).isEqualTo("new 3, refitted 1");
    }

    @Test
    void new_parts_only_are_in_order() {
        assertThat(washers().fitted("QM-4473", "4").findings(rule)).isEmpty();
    }

    @Test
    void a_part_that_may_be_refitted_is_in_order() {
        HardwareCase job = new HardwareCase(new PackDraft().kit("K", LineDraft.pieces("QM-1", 1)));

        assertThat(job.refitted("QM-1", "1").findings(rule)).isEmpty();
    }

    @Test
    void an_old_part_that_was_taken_off_again_is_no_longer_there() {
        HardwareCase job = washers().refitted("QM-4473", "1").oldTakenOff("QM-4473", "1");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void taking_off_a_new_one_does_not_undo_the_reuse() {
        HardwareCase job =
                washers()
                        .fitted("QM-4473", "1")
                        .refitted("QM-4473", "1")
                        .newTakenOff("QM-4473", "1", null);

        assertThat(job.parts(rule)).containsExactly("QM-4473");
    }

    @Test
    void it_does_not_matter_whether_the_part_is_required_of_the_vehicle() {
        PackDraft pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4474", 2)
                                        .singleUse()
                                        .when("transmission", "automatic"));

        assertThat(new HardwareCase(pack).refitted("QM-4474", "1").parts(rule))
                .containsExactly("QM-4474");
        assertThat(
                        new HardwareCase(pack)
                                .vehicle("transmission", "manual")
                                .refitted("QM-4474", "1")
                                .parts(rule))
                .containsExactly("QM-4474");
    }

    @Test
    void an_old_number_is_found_as_the_part_that_replaces_it() {
        PackDraft pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4472", 1).singleUse().replaces("QM-4402"));

        assertThat(new HardwareCase(pack).refitted("QM-4402", "1").parts(rule))
                .containsExactly("QM-4472");
    }

    @Test
    void what_was_refitted_after_completion_was_not_there_at_completion() {
        HardwareCase job = washers().at("2026-03-05T15:01").refitted("QM-4473", "1");

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        for (JudgedJob other :
                List.of(TestJobs.open(), TestJobs.abandoned(), TestJobs.notNeeded())) {
            assertThat(washers().on(other).refitted("QM-4473", "1").findings(rule)).isEmpty();
        }
    }

    private static HardwareCase washers() {
        return new HardwareCase(
                new PackDraft().kit("K", LineDraft.pieces("QM-4473", 4).singleUse()));
    }
}
