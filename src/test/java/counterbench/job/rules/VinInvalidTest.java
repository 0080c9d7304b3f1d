package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.PackDraft;
import counterbench.job.Outcome;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The VINs are those of 49 CFR 565.15(c), its worked example and one corruption of it. */
class VinInvalidTest {
    private final VinInvalid rule = new VinInvalid();

    @ParameterizedTest
    @CsvSource({
        "1G4AH59H45G118341, false",
        "1g4ah59h4 5g118341, false",
        "1M8GDM9AXKP042788, false",
        "1G4AH59H45G118331, true",
        "1G4AH59H45G11834, true",
        "1G4AH59H45G1183410, true",
        "IG4AH59H45G118341, true",
        "1G4AH59H45G11834O, true",
        "1G4AH59Q45G118341, true",
    })
    void length_letters_and_check_digit_count_case_and_spaces_do_not(String vin, boolean invalid) {
        assertThat(findings(vin, new PackDraft())).hasSize(invalid ? 1 : 0);
    }

    @Test
    void the_finding_quotes_the_vin_as_written_and_says_why() {
        Finding finding = findings("1g4ah59h45g118331", new PackDraft()).get(0);

        assertThat(finding.message()).contains("\"1g4ah59h45g118331\"", "check digit");
        assertThat(finding.evidence()).startsWith("1G4AH59H45G118331: ");
    }

    @Test
    void a_pack_may_do_without_the_check_digit_but_not_without_the_rest() {
        PackDraft pack = new PackDraft().withoutCheckDigit();

        assertThat(findings("1G4AH59H45G118331", pack)).isEmpty();
        assertThat(findings("1G4AH59H45G11833", pack)).hasSize(1);
    }

    @Test
    void only_completed_jobs_are_judged() {
        var open = TestJobs.judged(TestJobs.job("J-1", "short", null, null));

        assertThat(new VehicleCase().on(open).findings(rule)).isEmpty();
    }

    private List<Finding> findings(String vin, PackDraft pack) {
        var job = TestJobs.job("J-118", vin, TestJobs.COMPLETED, Outcome.COMPLETED);
        return new VehicleCase().pack(pack).on(TestJobs.judged(job)).findings(rule);
    }
}
