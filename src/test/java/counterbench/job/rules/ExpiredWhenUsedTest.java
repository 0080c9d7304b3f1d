package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.shared.Quantity;
import counterbench.stock.PartQuantity;
import counterbench.stock.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExpiredWhenUsedTest {
    private static final String SEALANT = "QM-4475";

    private final ExpiredWhenUsed rule = new ExpiredWhenUsed();

    @ParameterizedTest
    @CsvSource({
        "2026-03-06, 2026-03-05T08:30, false",
        "2026-03-05, 2026-03-05T00:00, false",
        "2026-03-05, 2026-03-05T23:59, false",
        "2026-03-04, 2026-03-05T00:00, true",
        "2026-03-04, 2026-03-04T23:59, false",
    })
    void a_kit_is_good_to_the_end_of_its_last_usable_day_at_the_site(
            String expiresOn, String used, boolean expired) {
        HardwareCase job =
                campaign().received("K-1", expiresOn).issued("K-1").at(used).fitted(SEALANT, "3");

        assertThat(job.findings(rule)).hasSize(expired ? 1 : 0);
    }

    @Test
    void the_finding_names_kit_days_and_part() {
        Finding finding =
                campaign()
                        .received("K-1", "2026-03-04")
                        .issued("K-1")
                        .fitted(SEALANT, "3")
                        .findings(rule)
                        .get(0);

        assertThat(finding.subject().part()).isEqualTo(SEALANT);
        assertThat(finding.evidence())
                .isEqualTo("kit K-1 was usable until 2026-03-04, used 2026-03-05");
    }

    @Test
    void a_named_kit_is_judged_though_it_was_issued_to_another_job() {
        assertThat(
                        campaign()
                                .received("K-7", "2026-03-04")
                                .fittedFrom("K-7", SEALANT)
                                .findings(rule))
                .hasSize(1);
    }

    @Test
    void a_named_lot_is_judged() {
        HardwareCase job = campaign().lot(SEALANT, "L-1", "2026-03-04");

        assertThat(job.fittedOfLot("L-1", SEALANT).findings(rule)).hasSize(1);
    }

    @Test
    void a_named_lot_of_today_is_good() {
        HardwareCase job = campaign().lot(SEALANT, "L-1", "2026-03-05");

        assertThat(job.fittedOfLot("L-1", SEALANT).findings(rule)).isEmpty();
    }

    @Test
    void the_lot_that_all_loose_issues_name_is_the_lot_of_the_use() {
        HardwareCase job =
                campaign()
                        .lot(SEALANT, "L-1", "2026-03-04")
                        .issuedLoose(SEALANT, "L-1")
                        .issuedLoose(SEALANT, "L-1")
                        .issuedLoose("QM-4471", "L-9");

        assertThat(job.fitted(SEALANT, "3").findings(rule)).hasSize(1);
    }

    @Test
    void with_loose_issues_of_two_lots_nobody_can_tell() {
        HardwareCase job =
                campaign()
                        .lot(SEALANT, "L-1", "2026-03-04")
                        .lot(SEALANT, "L-2", "2026-03-04")
                        .issuedLoose(SEALANT, "L-1")
                        .issuedLoose(SEALANT, "L-2");

        assertThat(job.fitted(SEALANT, "3").findings(rule)).isEmpty();
    }

    @Test
    void with_a_loose_issue_that_names_no_lot_nobody_can_tell() {
        HardwareCase job =
                campaign()
                        .lot(SEALANT, "L-1", "2026-03-04")
                        .issuedLoose(SEALANT, "L-1")
                        .issuedLoose(SEALANT, null);

        assertThat(job.fitted(SEALANT, "3").findings(rule)).isEmpty();
    }

    @Test
    void what_comes_from_a_good_kit_is_not_of_a_loose_lot() {
        HardwareCase job =
                campaign()
                        .received("K-1", null)
                        .issued("K-1")
                        .lot(SEALANT, "L-1", "2026-03-04")
                        .issuedLoose(SEALANT, "L-1");

        assertThat(job.fitted(SEALANT, "3").findings(rule)).isEmpty();
    }

    @Test
    void a_kit_that_came_without_the_part_did_not_give_it() {
        HardwareCase job =
                campaign()
                        .received(
                                "K-1", "2026-03-04", new PartQuantity(SEALANT, Quantity.of("3.5")))
                        .issued("K-1");

        assertThat(job.fitted(SEALANT, "3").findings(rule)).isEmpty();
    }

    @Test
    void each_fitting_is_judged_also_one_taken_off_again_or_after_completion() {
        HardwareCase expired = campaign().received("K-1", "2026-03-04").issued("K-1");

        assertThat(
                        expired.fitted(SEALANT, "3")
                                .newTakenOff(SEALANT, "3", null)
                                .at("2026-03-06T08:00")
                                .fitted(SEALANT, "3")
                                .findings(rule))
                .extracting(Finding::evidence)
                .containsExactly(
                        "kit K-1 was usable until 2026-03-04, used 2026-03-05; "
                                + "kit K-1 was usable until 2026-03-04, used 2026-03-06");
    }

    @Test
    void old_sealant_that_is_scrapped_or_a_part_without_shelf_life_is_in_order() {
        HardwareCase expired = campaign().received("K-1", "2026-03-04").issued("K-1");

        assertThat(
                        expired.use(SEALANT, "3", Use.Condition.SCRAPPED, null, null, null)
                                .fitted("QM-4471", "1")
                                .findings(rule))
                .isEmpty();
    }

    @Test
    void whether_the_line_applies_does_not_matter() {
        PackDraft pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.millilitres(SEALANT, "3.5", "3")
                                        .shelfLife()
                                        .when("transmission", "automatic"));
        HardwareCase job = new HardwareCase(pack).received("K-1", "2026-03-04").issued("K-1");

        assertThat(job.fitted(SEALANT, "3").findings(rule)).hasSize(1);
        assertThat(job.vehicle("transmission", "manual").findings(rule)).hasSize(1);
    }

    @Test
    void only_completed_jobs_are_judged() {
        HardwareCase job = campaign().received("K-1", "2026-03-04").issued("K-1");

        assertThat(job.fitted(SEALANT, "3").on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static HardwareCase campaign() {
        return new HardwareCase(
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4471", 1),
                                LineDraft.millilitres(SEALANT, "3.5", "3").shelfLife()));
    }
}
