package counterbench.job;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.LineDraft;
import counterbench.campaign.Pack;
import counterbench.campaign.PackDraft;
import counterbench.shared.Quantity;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RequirementsTest {
    private static final Map<String, String> AUTOMATIC = Map.of("transmission", "automatic");
    private static final Map<String, String> MANUAL = Map.of("transmission", "manual");

    @Test
    void a_line_without_condition_is_required_of_every_vehicle() {
        Pack pack = new PackDraft().kit("K", LineDraft.pieces("QM-4473", 4)).pack();

        Requirement washers = of(pack, Map.of(), "QM-4473");

        assertThat(washers.required()).isEqualTo(Quantity.of(4));
        assertThat(washers.applies()).isTrue();
        assertThat(washers.isConditionUnknown()).isFalse();
    }

    @Test
    void a_line_is_required_where_its_condition_holds_only() {
        Pack pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4474", 2).when("transmission", "automatic"))
                        .pack();

        assertThat(of(pack, AUTOMATIC, "QM-4474").required()).isEqualTo(Quantity.of(2));
        assertThat(of(pack, MANUAL, "QM-4474").required()).isEqualTo(Quantity.ZERO);
        assertThat(of(pack, MANUAL, "QM-4474").applies()).isFalse();
    }

    @Test
    void without_the_attribute_nobody_can_tell_what_is_required() {
        Pack pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4474", 2).when("transmission", "automatic"))
                        .pack();

        Requirement washers = of(pack, Map.of(), "QM-4474");

        assertThat(washers.isConditionUnknown()).isTrue();
        assertThat(washers.lacking()).containsExactly("transmission");
        assertThat(washers.applies()).isFalse();
    }

    @Test
    void attributes_and_answers_match_exactly() {
        Pack pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4474", 2).when("transmission", "automatic"))
                        .pack();

        assertThat(of(pack, Map.of("transmission", "Automatic"), "QM-4474").required())
                .isEqualTo(Quantity.ZERO);
        assertThat(of(pack, Map.of("Transmission", "automatic"), "QM-4474").isConditionUnknown())
                .isTrue();
    }

    @Test
    void a_kit_counts_as_often_as_a_job_needs_it_and_where_its_condition_holds() {
        Pack pack =
                new PackDraft()
                        .kit("A", 2, AUTOMATIC, LineDraft.millilitres("QM-4475", "3.5", "3"))
                        .kit("B", 1, MANUAL, LineDraft.millilitres("QM-4475", "2", "1.5"))
                        .pack();

        assertThat(of(pack, AUTOMATIC, "QM-4475").required()).isEqualTo(Quantity.of("7"));
        assertThat(of(pack, AUTOMATIC, "QM-4475").least()).isEqualTo(Quantity.of("6"));
        assertThat(of(pack, MANUAL, "QM-4475").least()).isEqualTo(Quantity.of("1.5"));
        assertThat(of(pack, Map.of(), "QM-4475").isConditionUnknown()).isTrue();
    }

    @Test
    void inside_a_kit_that_surely_does_not_apply_nothing_is_unclear() {
        Pack pack =
                new PackDraft()
                        .kit(
                                "A",
                                1,
                                AUTOMATIC,
                                LineDraft.pieces("QM-4474", 2).when("drive", "all wheels"))
                        .pack();

        assertThat(of(pack, MANUAL, "QM-4474").isConditionUnknown()).isFalse();
        assertThat(of(pack, AUTOMATIC, "QM-4474").lacking()).containsExactly("drive");
    }

    @Test
    void several_lines_for_one_part_add_up() {
        Pack pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4473", 4),
                                LineDraft.pieces("QM-4473", 2).when("transmission", "automatic"))
                        .pack();

        assertThat(of(pack, AUTOMATIC, "QM-4473").required()).isEqualTo(Quantity.of(6));
        assertThat(of(pack, MANUAL, "QM-4473").required()).isEqualTo(Quantity.of(4));
        assertThat(of(pack, Map.of(), "QM-4473").applies()).isFalse();
    }

    @Test
    void what_goes_on_the_core_is_not_required_on_the_vehicle() {
        Pack pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-4476", 5).onCore(),
                                LineDraft.pieces("QM-4471", 1))
                        .pack();

        assertThat(of(pack, Map.of(), "QM-4476").required()).isEqualTo(Quantity.ZERO);
        assertThat(Requirements.of(pack, Map.of()).onVehicle())
                .extracting(Requirement::part)
                .containsExactly("QM-4471");
    }

    @Test
    void an_older_number_counts_as_the_part_that_replaces_it() {
        Pack pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4472", 1).singleUse().replaces("QM-4402"))
                        .pack();

        Requirements requirements = Requirements.of(pack, Map.of());

        assertThat(requirements.packPart("QM-4402")).isEqualTo("QM-4472");
        assertThat(of(pack, Map.of(), "QM-4402").part()).isEqualTo("QM-4472");
        assertThat(of(pack, Map.of(), "QM-4472").replaces()).containsExactly("QM-4402");
        assertThat(requirements.packPart("QM-9")).isEqualTo("QM-9");
        assertThat(requirements.of("QM-9")).isEmpty();
    }

    @Test
    void a_chain_of_replacements_ends_at_the_newest_part() {
        Pack pack =
                new PackDraft()
                        .kit("K", LineDraft.pieces("QM-4472", 1).replaces("QM-4402"))
                        .kit("L", LineDraft.pieces("QM-4402", 1).replaces("QM-4332"))
                        .pack();

        assertThat(of(pack, Map.of(), "QM-4332").part()).isEqualTo("QM-4472");
        assertThat(of(pack, Map.of(), "QM-4402").required()).isEqualTo(Quantity.of(2));
    }

    @Test
    void an_older_number_with_two_successors_counts_as_the_one_for_the_vehicle() {
        Pack pack =
                new PackDraft()
                        .kit("A", 1, AUTOMATIC, LineDraft.pieces("QM-51", 1).replaces("QM-50"))
                        .kit("M", 1, MANUAL, LineDraft.pieces("QM-52", 1).replaces("QM-50"))
                        .pack();

        assertThat(Requirements.of(pack, AUTOMATIC).packPart("QM-50")).isEqualTo("QM-51");
        assertThat(Requirements.of(pack, MANUAL).packPart("QM-50")).isEqualTo("QM-52");
    }

    @Test
    void parts_that_replace_each_other_in_a_circle_end_somewhere() {
        Pack pack =
                new PackDraft()
                        .kit(
                                "K",
                                LineDraft.pieces("QM-1", 1).replaces("QM-2"),
                                LineDraft.pieces("QM-2", 1).replaces("QM-1"))
                        .pack();

        assertThat(Requirements.of(pack, Map.of()).all()).isNotEmpty();
    }

    private static Requirement of(Pack pack, Map<String, String> attributes, String part) {
        return Requirements.of(pack, attributes).of(part).orElseThrow();
    }
}
