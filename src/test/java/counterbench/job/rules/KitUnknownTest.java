package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.stock.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KitUnknownTest {
    private final KitUnknown rule = new KitUnknown();

    @ParameterizedTest
    @EnumSource(Use.Condition.class)
    void every_use_that_names_an_unknown_kit_is_found(Use.Condition condition) {
        HardwareCase job = campaign().use("QM-4471", "1", condition, "K-9", null, null);

        assertThat(job.parts(rule)).containsExactly("QM-4471");
    }

    @Test
    void an_issue_of_an_unknown_kit_is_found_without_a_part() {
        assertThat(campaign().issued("K-9").findings(rule))
                .extracting(f -> f.subject().part())
                .containsExactly((String) null);
    }

    @Test
    void a_kit_that_came_is_known() {
        assertThat(
                        campaign()
                                .received("K-1", null)
                                .issued("K-1")
                                .fittedFrom("K-1", "QM-4471")
                                .findings(rule))
                .isEmpty();
    }

    @Test
    void rows_that_name_no_kit_are_in_order() {
        assertThat(campaign().issuedLoose("QM-4471", null).fitted("QM-4471", "1").findings(rule))
                .isEmpty();
    }

    @Test
    void one_finding_a_part_names_all_its_unknown_kits() {
        HardwareCase job =
                campaign()
                        .fittedFrom("K-9", "QM-4471")
                        .fittedFrom("K-8", "QM-4471")
                        .fittedFrom("K-9", "QM-9");

        assertThat(job.findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("never received: K-8, K-9", "never received: K-9");
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(campaign().issued("K-9").on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static HardwareCase campaign() {
        return new HardwareCase(new PackDraft().kit("K", LineDraft.pieces("QM-4471", 1)));
    }
}
