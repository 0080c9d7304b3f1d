package counterbench.acts;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.UnderWay.Sending;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class UnderWayTest {
    private static final Instant MORNING = Instant.parse("2026-03-05T14:00:00Z");

    private static Sending kit(String from, String kit, int hour) {
        return new Sending(from, MORNING.plusSeconds(hour * 3600L), kit, null, Quantity.ONE, null);
    }

    private static Sending part(int quantity, @Nullable String lot, int hour) {
        return new Sending(
                "NORTH", MORNING.plusSeconds(hour * 3600L), null, "P", Quantity.of(quantity), lot);
    }

    @Test
    void a_kit_is_under_way_until_it_arrives_and_may_come_again() {
        Sending first = kit("NORTH", "K-1", 0);
        Sending again = kit("NORTH", "K-1", 9);

        assertThat(UnderWay.of(List.of(first), List.of()).ofKit("K-1")).containsExactly(first);
        assertThat(UnderWay.of(List.of(first), List.of(kit("NORTH", "K-1", 2))).kits()).isEmpty();
        assertThat(UnderWay.of(List.of(again, first), List.of(kit("NORTH", "K-1", 2))).ofKit("K-1"))
                .containsExactly(again);
        assertThat(UnderWay.of(List.of(first), List.of(kit("EAST", "K-1", 2))).kits())
                .containsExactly("K-1");
    }

    @Test
    void arrivals_are_taken_off_their_lot_first() {
        UnderWay underWay =
                UnderWay.of(
                        List.of(part(4, "A", 0), part(6, "B", 1)),
                        List.of(part(1, null, 2), part(5, "B", 3)));

        assertThat(underWay.ofPart("P")).containsExactly(part(3, "A", 0), part(1, "B", 1));
    }
}
