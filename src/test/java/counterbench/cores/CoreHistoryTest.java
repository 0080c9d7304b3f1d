package counterbench.cores;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.ADDED;
import static counterbench.cores.CoreEvent.Kind.PLUGGED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.REJECTED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreEvent.Kind.TAKEN_OFF;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.untold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Address;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoreHistoryTest {
    @Test
    void plugs_are_those_fitted_less_those_removed() {
        CoreStory story = removed().plugged(5, "2026-03-05T10:00").unplugged(2, "2026-03-05T11:00");
        assertThat(story.history().plugs()).isEqualTo(3);
    }

    @Test
    void a_plugged_row_without_a_quantity_means_one() {
        assertThat(removed().tell(PLUGGED, "2026-03-05T10:00").history().plugs()).isEqualTo(1);
    }

    @Test
    void packaging_is_that_of_the_last_packing_by_time() {
        CoreHistory history =
                removed()
                        .packed("replacement", "2026-03-07T10:00")
                        .packed("original", "2026-03-06T10:00")
                        .history();
        assertThat(history.lastPacked())
                .hasValueSatisfying(p -> assertThat(p.packaging()).isEqualTo("replacement"));
    }

    @Test
    void a_core_is_on_the_shipment_to_which_it_was_last_added() {
        CoreStory story =
                removed()
                        .shipment(ADDED, "S-1", "2026-03-07T10:00")
                        .shipment(ADDED, "S-2", "2026-03-08T10:00")
                        .shipment(TAKEN_OFF, "S-1", "2026-03-09T10:00");
        assertThat(story.history().placement())
                .contains(new Placement("S-2", at("2026-03-08T10:00")));
    }

    @Test
    void a_core_taken_off_is_on_no_shipment() {
        CoreStory story =
                removed()
                        .shipment(ADDED, "S-1", "2026-03-07T10:00")
                        .shipment(TAKEN_OFF, null, "2026-03-09T10:00");
        assertThat(story.history().placement()).isEmpty();
    }

    @Test
    void a_core_shipped_without_being_added_is_on_the_shipment_that_the_row_names() {
        CoreStory story = removed().shipment(SHIPPED, "S-1", "2026-03-07T10:00");
        assertThat(story.history().placement())
                .contains(new Placement("S-1", at("2026-03-07T10:00")));
        assertThat(removed().shipment(SHIPPED, null, "2026-03-07T10:00").history().placement())
                .isEmpty();
    }

    @Test
    void a_shipped_row_does_not_move_a_core_that_was_added_elsewhere() {
        CoreStory story =
                removed()
                        .shipment(ADDED, "S-1", "2026-03-07T10:00")
                        .shipment(SHIPPED, "S-2", "2026-03-08T10:00");
        assertThat(story.history().placement().map(Placement::shipment)).contains("S-1");
    }

    @Test
    void patience_starts_at_the_first_shipping() {
        CoreStory story =
                removed()
                        .shipment(SHIPPED, "S-1", "2026-03-09T10:00")
                        .shipment(SHIPPED, "S-1", "2026-03-07T10:00");
        assertThat(story.history().firstShipped()).contains(at("2026-03-07T10:00"));
    }

    @Test
    void a_row_that_names_the_tag_concerns_it_on_whatever_shipment() {
        CoreStory story = removed().answered("S-9", RECEIVED, "C-1", null, "2026-03-20T10:00");
        assertThat(story.history().isAcknowledged()).isTrue();
    }

    @Test
    void a_row_that_names_the_serial_concerns_it_on_its_own_shipment_only() {
        CoreStory story = removed().shipment(SHIPPED, "S-1", "2026-03-07T10:00");
        assertThat(story.answered("S-2", RECEIVED, null, "S-1", "2026-03-20T10:00").history())
                .returns(false, CoreHistory::isAcknowledged);
        assertThat(story.answered("S-1", RECEIVED, null, "S-1", "2026-03-20T10:00").history())
                .returns(true, CoreHistory::isAcknowledged);
    }

    @Test
    void a_row_that_names_another_tag_or_serial_does_not_concern_it() {
        CoreStory story = removed().shipment(SHIPPED, "S-1", "2026-03-07T10:00");
        story.answered("S-1", RECEIVED, "C-2", "S-1", "2026-03-20T10:00")
                .answered("S-1", RECEIVED, null, "S-2", "2026-03-20T10:00");
        assertThat(story.history().isAcknowledged()).isFalse();
    }

    @Test
    void a_row_that_names_nothing_speaks_of_the_whole_shipment() {
        CoreStory story =
                removed()
                        .shipment(SHIPPED, "S-1", "2026-03-07T10:00")
                        .answered("S-1", RECEIVED, null, null, "2026-03-20T10:00");
        assertThat(story.history().isAcknowledged()).isTrue();
    }

    @Test
    void the_latest_of_accepted_and_rejected_holds_from_either_source() {
        CoreStory story =
                removed()
                        .rejected("cracked", "2026-03-20T10:00")
                        .answered("S-1", ACCEPTED, "C-1", null, "2026-03-21T10:00")
                        .tell(RECEIVED, "2026-03-22T10:00");
        assertThat(story.history().verdict().map(Answer::kind)).contains(ACCEPTED);
    }

    @Test
    void of_two_verdicts_at_one_instant_the_later_row_holds() {
        CoreStory story =
                removed()
                        .answered("S-1", ACCEPTED, "C-1", null, "2026-03-20T10:00")
                        .tell(REJECTED, "2026-03-20T10:00");
        assertThat(story.history().verdict().map(Answer::kind)).contains(ACCEPTED);
    }

    @Test
    void job_serial_and_part_are_what_the_removal_says() {
        CoreHistory history =
                untold("C-1").removed("J-1", null, "QM-4471", "2026-03-05T09:00").history();
        assertThat(history.job()).isEqualTo("J-1");
        assertThat(history.serial()).isNull();
        assertThat(history.part()).isEqualTo("QM-4471");
        assertThat(history.removedAt()).contains(at("2026-03-05T09:00"));
    }

    @Test
    void a_history_is_of_one_core_and_not_empty() {
        List<CoreEvent> facts = removed().history().events();
        assertThatThrownBy(() -> new CoreHistory("C-2", facts, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CoreHistory("C-1", List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 26, 2026})
    void facts_in_any_order_give_the_same_history_and_state(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 300; run++) {
            List<CoreEvent> events = new ArrayList<>(someEvents(random));
            List<Acknowledgement> rows = new ArrayList<>(someRows(random));
            CoreHistory told = new CoreHistory("C-1", events, rows);
            Collections.shuffle(events, random);
            Collections.shuffle(rows, random);
            CoreHistory shuffled = new CoreHistory("C-1", events, rows);
            assertThat(shuffled).as("seed %d, run %d", seed, run).isEqualTo(told);
            assertThat(CoreStatus.of(shuffled, null))
                    .as("seed %d, run %d", seed, run)
                    .isEqualTo(CoreStatus.of(told, null));
            assertThat(Whereabouts.of(shuffled, "NORTH"))
                    .as("seed %d, run %d", seed, run)
                    .isEqualTo(Whereabouts.of(told, "NORTH"));
        }
    }

    private static List<CoreEvent> someEvents(Random random) {
        List<CoreEvent> events = new ArrayList<>();
        for (int line = 1; line <= 1 + random.nextInt(12); line++) {
            CoreEvent.Kind[] kinds = CoreEvent.Kind.values();
            events.add(
                    new CoreEvent(
                            new Address(1, line),
                            "C-1",
                            kinds[random.nextInt(kinds.length)],
                            sometime(random),
                            "J-1",
                            "S-" + random.nextInt(2),
                            null,
                            1 + random.nextInt(3),
                            null,
                            "S-" + random.nextInt(3),
                            null,
                            null,
                            null,
                            random.nextBoolean() ? "SOUTH" : "NORTH"));
        }
        return events;
    }

    private static List<Acknowledgement> someRows(Random random) {
        List<Acknowledgement> rows = new ArrayList<>();
        for (int line = 1; line <= random.nextInt(4); line++) {
            rows.add(
                    new Acknowledgement(
                            new Address(2, line),
                            "S-" + random.nextInt(3),
                            sometime(random),
                            List.of(RECEIVED, ACCEPTED, REJECTED).get(random.nextInt(3)),
                            random.nextBoolean() ? "C-" + random.nextInt(2) : null,
                            random.nextBoolean() ? "S-" + random.nextInt(2) : null,
                            null));
        }
        return rows;
    }

    private static Instant sometime(Random random) {
        return at("2026-03-05T09:00").plusSeconds(60L * random.nextInt(10));
    }
}
