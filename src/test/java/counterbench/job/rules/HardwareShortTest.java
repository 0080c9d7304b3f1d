package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HardwareShortTest {
    private final HardwareShort rule = new HardwareShort();

    @ParameterizedTest
    @CsvSource({
        "4, 0, 0, false",
        "3, 1, 0, false",
        "5, 0, 0, false",
        "5, 0, 1, false",
        "4, 0, 1, true",
        "3, 0, 0, true",
        "0, 3, 0, true",
    })
    void four_washers_new_or_old_must_be_there(
            String fresh, String old, String takenOff, boolean isShort) {
        HardwareCase job =
                washers()
                        .fitted("QM-4473", fresh)
                        .refitted("QM-4473", old)
                        .newTakenOff("QM-4473", takenOff, null);

        assertThat(job.parts(rule)).isEqualTo(isShort ? List.of("QM-4473") : List.of());
    }

    @Test
    void a_part_of_which_nothing_was_fitted_is_short() {
        var findings = washers().findings(rule);

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).message()).contains("0 of 4 QM-4473");
        assertThat(findings.get(0).evidence()).isEqualTo("required 4, new 0, refitted 0");
    }

    @ParameterizedTest
    @CsvSource({"3.5, false", "3, false", "2.999, true"})
    void of_a_measured_part_the_least_will_do(String fitted, boolean isShort) {
        HardwareCase job =
                new HardwareCase(
                        new PackDraft().kit("K", LineDraft.millilitres("QM-4475", "3.5", "3")));

        assertThat(job.fitted("QM-4475", fitted).parts(rule))
                .isEqualTo(isShort ? List.of("QM-4475") : List.of());
    }

    @Test
    void what_the_vehicle_does_not_need_is_never_short() {
        assertThat(sensorWashers().vehicle("transmission", "manual").findings(rule)).isEmpty();
        assertThat(sensorWashers().vehicle("transmission", "automatic").parts(rule))
                .containsExactly("QM-4474");
    }

    @Test
    void where_it_cannot_be_told_what_is_needed_nothing_is_judged() {
        assertThat(sensorWashers().findings(rule)).isEmpty();
    }

    @Test
    void a_part_with_one_unclear_line_is_not_judged_at_all() {
        HardwareCase job =
                new HardwareCase(
                        new PackDraft()
                                .kit(
                                        "K",
                                        LineDraft.pieces("QM-4473", 4),
                                        LineDraft.pieces("QM-4473", 2)
                                                .when("transmission", "automatic")));

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void what_goes_on_the_core_is_not_judged() {
        HardwareCase job =
                new HardwareCase(new PackDraft().kit("K", LineDraft.pieces("QM-4476", 5).onCore()));

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void an_old_number_counts_against_what_is_required() {
        PackDraft pack =
                new PackDraft().kit("K", LineDraft.pieces("QM-4472", 1).replaces("QM-4402"));

        assertThat(new HardwareCase(pack).fitted("QM-4402", "1").findings(rule)).isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(washers().on(TestJobs.open()).findings(rule)).isEmpty();
        assertThat(washers().on(TestJobs.abandoned()).findings(rule)).isEmpty();
        assertThat(washers().on(TestJobs.notNeeded()).findings(rule)).isEmpty();
    }

    private static HardwareCase washers() {
        return new HardwareCase(
                new PackDraft().kit("K", LineDraft.pieces("QM-4473", 4).singleUse()));
    }

    private static HardwareCase sensorWashers() {
        return new HardwareCase(
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4474", 2).when("transmission", "automatic")));
    }
}
