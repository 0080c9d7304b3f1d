package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.campaign.PartUnit;
import counterbench.job.TestJobs;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HardwareOverTest {
    private final HardwareOver rule = new HardwareOver();

    @ParameterizedTest
    @CsvSource({"4, 0, 0, false", "5, 0, 1, false", "4, 1, 0, true", "5, 0, 0, true"})
    void more_than_four_washers_are_too_many(
            String fresh, String old, String takenOff, boolean over) {
        HardwareCase job =
                campaign()
                        .fitted("QM-4473", fresh)
                        .refitted("QM-4473", old)
                        .newTakenOff("QM-4473", takenOff, null);

        assertThat(job.parts(rule)).isEqualTo(over ? List.of("QM-4473") : List.of());
    }

    @Test
    void the_finding_says_how_many_are_there_and_how_many_are_required() {
        var finding = campaign().fitted("QM-4473", "5").findings(rule).get(0);

        assertThat(finding.message()).contains("5 of QM-4473", "5 new, 0 refitted", "4 required");
        assertThat(finding.evidence()).isEqualTo("required 4, new 5, refitted 0");
    }

    @Test
    void a_measured_part_is_never_too_much() {
        assertThat(campaign().fitted("QM-4475", "9").findings(rule)).isEmpty();
    }

    @Test
    void any_of_a_counted_part_that_the_pack_does_not_name_is_too_much() {
        assertThat(campaign().fitted("QM-9", "1").parts(rule)).containsExactly("QM-9");
    }

    @Test
    void a_measured_part_that_the_pack_does_not_name_is_not_judged() {
        assertThat(campaign().unit("QM-9", PartUnit.G).fitted("QM-9", "1").findings(rule))
                .isEmpty();
    }

    @Test
    void any_of_a_part_that_the_vehicle_does_not_need_is_too_much() {
        assertThat(campaign().vehicle("transmission", "manual").fitted("QM-4474", "1").parts(rule))
                .containsExactly("QM-4474");
    }

    @Test
    void where_it_cannot_be_told_what_is_needed_nothing_is_judged() {
        assertThat(campaign().fitted("QM-4474", "9").findings(rule)).isEmpty();
    }

    @Test
    void what_goes_on_the_core_is_not_judged() {
        assertThat(campaign().fitted("QM-4476", "9").findings(rule)).isEmpty();
    }

    @Test
    void an_old_number_and_its_successor_together_are_one_part() {
        assertThat(campaign().fitted("QM-4472", "1").fitted("QM-4402", "1").parts(rule))
                .containsExactly("QM-4472");
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(campaign().on(TestJobs.abandoned()).fitted("QM-9", "1").findings(rule))
                .isEmpty();
    }

    private static HardwareCase campaign() {
        return new HardwareCase(
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4472", 1).replaces("QM-4402"),
                                LineDraft.pieces("QM-4473", 4).singleUse(),
                                LineDraft.pieces("QM-4474", 2).when("transmission", "automatic"),
                                LineDraft.millilitres("QM-4475", "3.5", "3"),
                                LineDraft.pieces("QM-4476", 5).onCore()));
    }
}
