package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.job.JudgedJob;
import counterbench.job.Outcome;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VehicleDoneTwiceTest {
    private final VehicleDoneTwice rule = new VehicleDoneTwice();

    @ParameterizedTest
    @CsvSource({
        "NORTH, J-100, 2026-03-04T10:00, true",
        "SOUTH, J-118, 2026-03-04T10:00, true",
        "NORTH, J-117, 2026-03-05T15:00, true",
        "NORTH, J-119, 2026-03-05T15:00, false",
        "NORTH, J-100, 2026-03-05T15:01, false",
    })
    void earlier_is_by_completion_then_by_job_number_at_any_site(
            String site, String job, String completedAt, boolean twice) {
        assertThat(new VehicleCase().visit(site, job, completedAt).findings(rule))
                .hasSize(twice ? 1 : 0);
    }

    @Test
    void a_job_is_not_earlier_than_itself() {
        assertThat(new VehicleCase().visit("NORTH", "J-118", "2026-03-05T15:00").findings(rule))
                .isEmpty();
    }

    @Test
    void a_vehicle_done_once_is_in_order() {
        assertThat(new VehicleCase().findings(rule)).isEmpty();
    }

    @Test
    void a_job_may_do_again_the_one_that_it_names() {
        VehicleCase job = new VehicleCase().on(redoOf("J-100"));

        assertThat(job.visit("NORTH", "J-100", "2026-03-01T10:00").findings(rule)).isEmpty();
    }

    @Test
    void every_earlier_job_that_it_does_not_name_is_told() {
        VehicleCase job =
                new VehicleCase()
                        .on(redoOf("J-100"))
                        .visit("SOUTH", "S-3", "2026-02-20T10:00")
                        .visit("NORTH", "J-100", "2026-03-01T10:00")
                        .visit("NORTH", "J-90", "2026-02-10T10:00");

        assertThat(job.findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("1G4AH59H45G118341 done by job J-90 at NORTH, job S-3 at SOUTH");
    }

    @Test
    void only_completed_jobs_are_judged() {
        VehicleCase job = new VehicleCase().visit("NORTH", "J-100", "2026-03-04T10:00");

        assertThat(job.on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static JudgedJob redoOf(String earlier) {
        return TestJobs.judged(
                TestJobs.redo(
                        "J-118", TestJobs.VIN, TestJobs.COMPLETED, Outcome.COMPLETED, earlier));
    }
}
