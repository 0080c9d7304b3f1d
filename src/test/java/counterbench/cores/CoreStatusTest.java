package counterbench.cores;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.ADDED;
import static counterbench.cores.CoreEvent.Kind.DRAIN_BEGUN;
import static counterbench.cores.CoreEvent.Kind.DRAIN_ENDED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.REJECTED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreEvent.Kind.TAKEN_OFF;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CoreStatusTest {
    private static void assertState(CoreStory story, CoreState state, String since) {
        assertThat(CoreStatus.of(story.history(), null))
                .isEqualTo(new CoreStatus(state, at(since)));
    }

    @Test
    void each_fact_of_a_life_in_order_brings_the_core_further() {
        CoreStory story = removed();
        assertState(story, CoreState.REMOVED, "2026-03-05T09:00");
        story.tell(DRAIN_BEGUN, "2026-03-05T09:10");
        assertState(story, CoreState.DRAINING, "2026-03-05T09:10");
        story.tell(DRAIN_ENDED, "2026-03-05T09:30");
        assertState(story, CoreState.DRAINED, "2026-03-05T09:30");
        story.plugged(5, "2026-03-05T09:40");
        assertState(story, CoreState.PLUGGED, "2026-03-05T09:40");
        story.packed("replacement", "2026-03-05T09:50");
        assertState(story, CoreState.PACKED, "2026-03-05T09:50");
        story.shipment(ADDED, "S-1", "2026-03-06T09:00");
        assertState(story, CoreState.ON_SHIPMENT, "2026-03-06T09:00");
        story.shipment(SHIPPED, "S-1", "2026-03-07T09:00");
        assertState(story, CoreState.SHIPPED, "2026-03-07T09:00");
        story.tell(RECEIVED, "2026-03-12T09:00");
        assertState(story, CoreState.RECEIVED, "2026-03-12T09:00");
        story.tell(REJECTED, "2026-03-13T09:00");
        assertState(story, CoreState.REJECTED, "2026-03-13T09:00");
        story.tell(ACCEPTED, "2026-03-14T09:00");
        assertState(story, CoreState.ACCEPTED, "2026-03-14T09:00");
    }

    @Test
    void a_credit_outranks_all() {
        assertThat(CoreStatus.of(removed().history(), at("2026-04-01T00:00")))
                .isEqualTo(new CoreStatus(CoreState.CREDITED, at("2026-04-01T00:00")));
    }

    @Test
    void what_the_return_centre_says_outranks_shop_facts_that_are_later() {
        CoreStory story =
                removed().tell(ACCEPTED, "2026-03-12T09:00").plugged(5, "2026-03-13T09:00");
        assertState(story, CoreState.ACCEPTED, "2026-03-12T09:00");
    }

    @Test
    void a_core_taken_off_its_shipment_is_packed_again() {
        CoreStory story =
                removed()
                        .packed("replacement", "2026-03-05T09:50")
                        .shipment(ADDED, "S-1", "2026-03-06T09:00")
                        .shipment(TAKEN_OFF, "S-1", "2026-03-06T10:00");
        assertState(story, CoreState.PACKED, "2026-03-05T09:50");
    }

    @Test
    void a_core_whose_last_plug_is_taken_out_is_drained_if_it_ever_was() {
        CoreStory never = removed().plugged(1, "2026-03-05T09:40").unplugged(1, "2026-03-05T09:45");
        assertState(never, CoreState.REMOVED, "2026-03-05T09:45");
        CoreStory once =
                removed()
                        .drained("2026-03-05T09:10", "2026-03-05T09:30")
                        .plugged(1, "2026-03-05T09:40")
                        .unplugged(1, "2026-03-05T09:45");
        assertState(once, CoreState.DRAINED, "2026-03-05T09:45");
    }

    @Test
    void an_end_with_no_drain_open_changes_nothing() {
        assertState(
                removed().tell(DRAIN_ENDED, "2026-03-05T09:30"),
                CoreState.REMOVED,
                "2026-03-05T09:00");
    }

    @Test
    void states_have_words() {
        assertThat(CoreState.ON_SHIPMENT.word()).isEqualTo("on-shipment");
    }
}
