package counterbench.cores;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.ADDED;
import static counterbench.cores.CoreEvent.Kind.ARRIVED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.REJECTED;
import static counterbench.cores.CoreEvent.Kind.SENT;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.Whereabouts.Place;
import counterbench.cores.rules.CoreOverdue;
import counterbench.cores.rules.DrainNotLogged;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** In which yard a core lies, or where it is going. */
class WhereaboutsTest {
    private static void assertWhere(
            CoreStory story, Place place, String site, @Nullable String from, String since) {
        assertThat(Whereabouts.of(story.history(), "NORTH"))
                .isEqualTo(new Whereabouts(place, site, from, at(since)));
    }

    @Test
    void a_core_lies_at_home_until_it_is_sent_and_is_on_the_way_until_it_arrives() {
        CoreStory story = removed();
        assertWhere(story, Place.IN_YARD, "NORTH", null, "2026-03-05T09:00");
        story.moved(SENT, "SOUTH", "2026-03-06T09:00");
        assertWhere(story, Place.ON_THE_WAY, "SOUTH", "NORTH", "2026-03-06T09:00");
        story.moved(ARRIVED, "SOUTH", "2026-03-07T09:00");
        assertWhere(story, Place.IN_YARD, "SOUTH", null, "2026-03-07T09:00");
        story.moved(SENT, "WEST", "2026-03-08T09:00");
        assertWhere(story, Place.ON_THE_WAY, "WEST", "SOUTH", "2026-03-08T09:00");
        story.moved(ARRIVED, "WEST", "2026-03-09T09:00").moved(SENT, "NORTH", "2026-03-10T09:00");
        assertWhere(story, Place.ON_THE_WAY, "NORTH", "WEST", "2026-03-10T09:00");
        story.moved(ARRIVED, "NORTH", "2026-03-11T09:00");
        assertWhere(story, Place.IN_YARD, "NORTH", null, "2026-03-11T09:00");
    }

    @Test
    void what_was_shipped_is_gone_from_the_yard_in_which_it_lay() {
        CoreStory story =
                removed()
                        .moved(SENT, "SOUTH", "2026-03-06T09:00")
                        .moved(ARRIVED, "SOUTH", "2026-03-07T09:00")
                        .shipment(SHIPPED, "S-1", "2026-03-08T09:00");
        assertWhere(story, Place.GONE, "SOUTH", null, "2026-03-08T09:00");
        story.tell(REJECTED, "2026-03-12T09:00");
        assertWhere(story, Place.GONE, "SOUTH", null, "2026-03-08T09:00");
        story.moved(SENT, "NORTH", "2026-03-14T09:00");
        assertWhere(story, Place.ON_THE_WAY, "NORTH", "SOUTH", "2026-03-14T09:00");
    }

    @Test
    void what_the_return_centre_answered_is_not_on_the_way_for_ever() {
        CoreStory sent = removed().moved(SENT, "SOUTH", "2026-03-06T09:00");
        assertWhere(
                sent.tell(RECEIVED, "2026-03-12T09:00"),
                Place.GONE,
                "SOUTH",
                null,
                "2026-03-12T09:00");
        assertWhere(
                removed().tell(RECEIVED, "2026-03-04T09:00"),
                Place.GONE,
                "NORTH",
                null,
                "2026-03-04T09:00");
        assertWhere(
                removed()
                        .tell(ACCEPTED, "2026-03-05T19:00")
                        .moved(SENT, "SOUTH", "2026-03-06T09:00"),
                Place.GONE,
                "SOUTH",
                null,
                "2026-03-05T19:00");
    }

    @Test
    void it_is_told_where_a_core_was_at_an_earlier_time() {
        CoreHistory core =
                removed()
                        .moved(SENT, "SOUTH", "2026-03-06T09:00")
                        .moved(ARRIVED, "SOUTH", "2026-03-07T09:00")
                        .history();
        assertThat(Whereabouts.at(at("2026-03-01T09:00"), core, "NORTH").site()).isEqualTo("NORTH");
        assertThat(Whereabouts.at(at("2026-03-06T08:59"), core, "NORTH").site()).isEqualTo("NORTH");
        assertThat(Whereabouts.at(at("2026-03-06T09:00"), core, "NORTH").isOnTheWay()).isTrue();
        assertThat(Whereabouts.at(at("2026-03-07T09:00"), core, "NORTH").isOnTheWay()).isFalse();
    }

    @Test
    void the_order_in_which_facts_come_to_be_known_does_not_matter() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            CoreHistory whole = wandering(random).history();
            List<CoreEvent> shuffled = new ArrayList<>(whole.events());
            Collections.shuffle(shuffled, random);
            CoreHistory known = new CoreHistory(whole.core(), shuffled, List.of());
            assertThat(Whereabouts.of(known, "NORTH"))
                    .as("seed %d", seed)
                    .isEqualTo(Whereabouts.of(whole, "NORTH"));
        }
    }

    private static CoreStory wandering(Random random) {
        CoreStory story = removed();
        for (int day = 10; day < 30; day++) {
            String at = "2026-03-%dT09:00".formatted(day);
            String site = List.of("NORTH", "SOUTH", "WEST").get(random.nextInt(3));
            switch (random.nextInt(6)) {
                case 0, 1 -> story.moved(SENT, site, at);
                case 2, 3 -> story.moved(ARRIVED, site, at);
                case 4 -> story.plugged(1, at);
                default -> story.shipment(SHIPPED, "S-1", at);
            }
        }
        return story;
    }

    @Test
    void on_the_way_is_a_state_of_its_own_that_shipping_and_answers_outrank() {
        CoreStory story =
                removed()
                        .packed("replacement", "2026-03-05T10:00")
                        .shipment(ADDED, "S-1", "2026-03-05T11:00")
                        .moved(SENT, "SOUTH", "2026-03-06T09:00");
        assertState(story, CoreState.IN_TRANSIT, "2026-03-06T09:00");
        story.moved(ARRIVED, "SOUTH", "2026-03-07T09:00");
        assertState(story, CoreState.ON_SHIPMENT, "2026-03-05T11:00");
        story.moved(SENT, "NORTH", "2026-03-08T09:00").shipment(SHIPPED, "S-1", "2026-03-07T12:00");
        assertState(story, CoreState.SHIPPED, "2026-03-07T12:00");
    }

    private static void assertState(CoreStory story, CoreState state, String since) {
        assertThat(CoreStatus.of(story.history(), null))
                .isEqualTo(new CoreStatus(state, at(since)));
    }

    @Test
    void a_shipment_is_open_until_the_core_leaves_with_it() {
        CoreStory story = removed().shipment(ADDED, "S-1", "2026-03-05T11:00");
        assertThat(story.history().openPlacement()).isPresent();
        story.shipment(SHIPPED, "S-1", "2026-03-06T11:00").tell(REJECTED, "2026-03-08T11:00");
        assertThat(story.history().openPlacement()).isEmpty();
        story.shipment(ADDED, "S-2", "2026-03-09T11:00");
        assertThat(story.history().openPlacement().map(Placement::shipment)).contains("S-2");
    }

    @Test
    void being_sent_to_another_yard_is_neither_shipped_nor_packed() {
        CoreStory story =
                removed()
                        .in(CoreStory.completedJob("2026-03-05T12:00"))
                        .moved(SENT, "SOUTH", "2026-03-06T09:00");
        assertThat(story.judgedBy(new CoreOverdue())).hasSize(1);
        assertThat(story.judgedBy(new DrainNotLogged())).isEmpty();
        assertThat(story.history().isHandedOn()).isFalse();
        assertThat(story.history().firstShipped()).isEmpty();
    }
}
