package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.job.TestJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VehicleNotListedTest {
    private final VehicleNotListed rule = new VehicleNotListed();

    @ParameterizedTest
    @CsvSource({"true, true, false", "true, false, true", "false, false, false"})
    void a_vehicle_must_be_on_the_list_where_there_is_one(
            boolean hasList, boolean isListed, boolean found) {
        assertThat(new VehicleCase().list(hasList, isListed).findings(rule)).hasSize(found ? 1 : 0);
    }

    @Test
    void the_finding_names_vehicle_and_campaign() {
        assertThat(new VehicleCase().list(true, false).findings(rule).get(0).message())
                .isEqualTo(
                        "job J-118: vehicle 1G4AH59H45G118341 is not on the list of campaign"
                                + " QM-26-014");
    }

    @Test
    void only_completed_jobs_are_judged() {
        assertThat(new VehicleCase().list(true, false).on(TestJobs.abandoned()).findings(rule))
                .isEmpty();
    }
}
