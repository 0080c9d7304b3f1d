package counterbench.acts.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.Shipment;
import counterbench.acts.ShipmentState;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.Whereabouts;
import counterbench.shared.units.Weight;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which cores are proposed for a shipment. */
class ProposalTest {
    private static final List<BoardLine> BOARD =
            List.of(
                    line("late", NextStep.ADD, "2026-04-01", "8 kg"),
                    line("soon", NextStep.ADD, "2026-04-20", "15 lb"),
                    line("then", NextStep.ADD, "2026-04-21", "2 kg"),
                    line("light", NextStep.ADD, null, null),
                    line("open", NextStep.PLUG, "2026-03-01", "1 kg"),
                    line("stopped", NextStep.PUT_RIGHT, "2026-03-01", "1 kg"),
                    line("away", NextStep.ADD, "2026-03-01", "1 kg", "SOUTH"),
                    line("on the way", NextStep.ARRIVE, "2026-03-01", "1 kg", "SOUTH"));

    private static BoardLine line(
            String core, NextStep next, @Nullable String shipBy, @Nullable String weight) {
        return line(core, next, shipBy, weight, "NORTH");
    }

    private static BoardLine line(
            String core,
            NextStep next,
            @Nullable String shipBy,
            @Nullable String weight,
            String yard) {
        return new BoardLine(
                core,
                "J-1",
                "QM-26-014",
                new CoreStatus(CoreState.PACKED, Instant.EPOCH),
                next,
                null,
                null,
                5,
                5,
                null,
                shipBy == null ? null : LocalDate.parse(shipBy),
                null,
                new Whereabouts(Whereabouts.Place.IN_YARD, yard, null, Instant.EPOCH),
                weight == null ? null : weight(weight),
                BigDecimal.ONE,
                List.of());
    }

    private static Weight weight(String text) {
        return Weight.parse(text).orElseThrow();
    }

    private static List<String> proposed(@Nullable String whole, @Nullable String limit) {
        return proposed(whole, limit, "NORTH");
    }

    private static List<String> proposed(
            @Nullable String whole, @Nullable String limit, String yard) {
        Shipment to = new Shipment("S-1", "C", "T", whole == null ? null : weight(whole), "Hal");
        return Proposal.of(
                        BOARD,
                        new ShipmentState(to, List.of()),
                        yard,
                        limit == null ? null : weight(limit))
                .stream()
                .map(BoardLine::core)
                .toList();
    }

    @Test
    void those_that_may_go_are_proposed_the_oldest_deadline_first() {
        assertThat(proposed(null, null)).containsExactly("late", "soon", "then", "light");
    }

    @Test
    void only_those_in_the_yard_that_the_shipment_leaves_from_are_proposed() {
        assertThat(proposed(null, null, "SOUTH")).containsExactly("away");
    }

    /** 8 kg and 15 lb (6.80388555 kg) are 14.80388555 kg. */
    @Test
    void as_many_are_proposed_as_the_limit_lets_go() {
        assertThat(proposed(null, "14.80388 kg")).containsExactly("late", "then", "light");
        assertThat(proposed(null, "14.803886 kg")).containsExactly("late", "soon", "light");
        assertThat(proposed("10 kg", "10 kg")).containsExactly("light");
    }
}
