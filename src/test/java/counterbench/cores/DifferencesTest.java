package counterbench.cores;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Address;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the return centre's sheet and a shipment do not have alike. */
class DifferencesTest {
    private final List<Acknowledgement> rows = new ArrayList<>();

    private static CoreHistory core(String tag, @Nullable String serial) {
        return CoreStory.untold(tag)
                .removed("J-1", serial, null, "2026-03-05T09:00")
                .shipment(CoreEvent.Kind.ADDED, "S-1", "2026-03-06T09:00")
                .history();
    }

    private DifferencesTest said(@Nullable String tag, @Nullable String serial) {
        rows.add(
                new Acknowledgement(
                        new Address(2, rows.size() + 1),
                        "S-1",
                        CoreStory.at("2026-03-12T09:00"),
                        rows.isEmpty() ? RECEIVED : ACCEPTED,
                        tag,
                        serial,
                        null));
        return this;
    }

    private List<String> found(CoreHistory... on) {
        return Differences.of(
                        new ShipmentFacts(CoreStory.SITE, "S-1", List.of(on), rows), List.of())
                .stream()
                .map(Difference::words)
                .toList();
    }

    @Test
    void before_they_say_anything_nothing_differs() {
        assertThat(found(core("C-1001", "7P1"))).isEmpty();
    }

    @Test
    void sheets_that_are_alike_do_not_differ() {
        said("C-1001", "7P1").said(null, "7P2");
        assertThat(found(core("C-1001", "7P1"), core("C-1002", "7P2"))).isEmpty();
    }

    @Test
    void a_row_of_the_whole_shipment_names_every_core() {
        said(null, null);
        assertThat(found(core("C-1001", "7P1"), core("C-1002", null))).isEmpty();
    }

    @Test
    void a_core_that_they_left_out_is_told() {
        said("C-1001", null);
        assertThat(found(core("C-1001", "7P1"), core("C-2002", "7P2")))
                .containsExactly("on our sheet and not on theirs: core C-2002, serial 7P2");
    }

    @Test
    void the_same_serial_speaks_for_a_core_before_a_tag_that_is_alike() {
        said("C-1009", "7P2");
        assertThat(found(core("C-1001", "7P1"), core("C-2002", "7P2")))
                .containsExactly(
                        "on their sheet and not on ours: core C-1009, serial 7P2; is it C-2002? (same"
                                + " serial)",
                        "on our sheet and not on theirs: core C-1001, serial 7P1",
                        "on our sheet and not on theirs: core C-2002, serial 7P2");
    }

    @Test
    void two_cores_that_are_as_near_are_both_shown_and_none_is_chosen() {
        said("C-1003", null);
        assertThat(found(core("C-1001", null), core("C-1002", null)))
                .startsWith(
                        "on their sheet and not on ours: core C-1003; is it C-1001? (the tag is a slip"
                                + " of the hand away)",
                        "on their sheet and not on ours: core C-1003; is it C-1002? (the tag is a slip"
                                + " of the hand away)");
    }

    @Test
    void a_core_that_they_have_named_already_is_not_proposed() {
        said("C-1001", null).said("C-1001", null).said("C-1002", null);
        assertThat(found(core("C-1001", null)))
                .containsExactly(
                        "on their sheet and not on ours: core C-1002; no core that they left out is"
                                + " like it");
    }

    @Test
    void a_core_that_they_only_received_may_be_meant_where_they_accept_another_tag() {
        said("C-1001", null).said("C-1O01", null);
        assertThat(found(core("C-1001", null)))
                .containsExactly(
                        "on their sheet and not on ours: core C-1O01; is it C-1001? (the tag is a slip"
                                + " of the hand away)");
    }

    @Test
    void what_they_said_of_all_does_not_hide_which_core_a_name_may_mean() {
        said("C-1009", null).said(null, null);
        assertThat(found(core("C-1001", null)))
                .containsExactly(
                        "on their sheet and not on ours: core C-1009; is it C-1001? (the tag is a slip"
                                + " of the hand away)");
    }

    @Test
    void a_serial_with_two_letters_swapped_is_a_slip_and_another_is_not() {
        said("C-1001", "7P299161").said("C-2002", "4D000001");
        assertThat(found(core("C-1001", "7P299116"), core("C-2002", "7P299116")))
                .containsExactly(
                        "core C-1001 bears another serial with them: 7P299161 where ours is 7P299116,"
                                + " a slip of the hand apart",
                        "core C-2002 bears another serial with them: 4D000001 where ours is 7P299116,"
                                + " not alike");
    }
}
