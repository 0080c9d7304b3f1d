package counterbench.job.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.LineDraft;
import counterbench.campaign.PackDraft;
import counterbench.campaign.StepDraft;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConditionUnknownTest {
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private final ConditionUnknown rule = new ConditionUnknown();

    static Stream<PackDraft> packs_that_ask_for_the_transmission() {
        return Stream.of(
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4474", 2).when("transmission", "automatic")),
                new PackDraft().kit("K", 1, AUTOMATIC.answers(), LineDraft.pieces("QM-4474", 2)),
                new PackDraft().step(StepDraft.sign("open").when(AUTOMATIC)),
                new PackDraft().core(core(AUTOMATIC)),
                new PackDraft().claim(claim(AUTOMATIC)));
    }

    @ParameterizedTest
    @MethodSource("packs_that_ask_for_the_transmission")
    void a_vehicle_without_the_attribute_is_found_whatever_asks_for_it(PackDraft pack) {
        VehicleCase job = new VehicleCase().pack(pack);

        assertThat(job.findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("lacking transmission");
    }

    @ParameterizedTest
    @MethodSource("packs_that_ask_for_the_transmission")
    void a_vehicle_with_the_attribute_is_in_order_whatever_the_answer(PackDraft pack) {
        VehicleCase job = new VehicleCase().pack(pack).attributes(Map.of("transmission", "manual"));

        assertThat(job.findings(rule)).isEmpty();
    }

    @Test
    void all_attributes_that_are_lacking_are_named_once_for_the_job() {
        PackDraft pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-1", 1).when("transmission", "automatic"),
                                LineDraft.pieces("QM-2", 1).when("drive", "all wheels"),
                                LineDraft.pieces("QM-3", 1).when("drive", "front wheels"));

        assertThat(new VehicleCase().pack(pack).findings(rule))
                .extracting(Finding::evidence)
                .containsExactly("lacking drive, transmission");
    }

    @Test
    void an_attribute_asked_beside_one_that_answers_no_is_lacking_all_the_same() {
        Condition both = new Condition(Map.of("drive", "all wheels", "transmission", "automatic"));
        PackDraft pack = new PackDraft().step(StepDraft.sign("open").when(both));

        assertThat(
                        new VehicleCase()
                                .pack(pack)
                                .attributes(Map.of("transmission", "manual"))
                                .findings(rule))
                .hasSize(1);
    }

    @Test
    void a_labour_line_that_asks_for_the_outcome_asks_nothing_of_the_vehicle() {
        Condition outcome = new Condition(Map.of("outcome", "completed"));

        assertThat(new VehicleCase().pack(new PackDraft().claim(claim(outcome))).findings(rule))
                .isEmpty();
    }

    @Test
    void only_completed_jobs_are_judged() {
        PackDraft pack = new PackDraft().step(StepDraft.sign("open").when(AUTOMATIC));

        assertThat(new VehicleCase().pack(pack).on(TestJobs.open()).findings(rule)).isEmpty();
    }

    private static CoreTerms core(Condition when) {
        return new CoreTerms(
                "QM-4471", 1, when, new BigDecimal("12"), 5, null, 30, new BigDecimal("480.00"));
    }

    private static ClaimTerms claim(Condition when) {
        return new ClaimTerms(
                List.of(new ClaimTerms.Operation("14-0260", new BigDecimal("2.6"), when)),
                new BigDecimal("30"),
                60,
                ClaimTerms.Needs.NONE);
    }
}
