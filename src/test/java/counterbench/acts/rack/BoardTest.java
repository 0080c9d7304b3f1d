package counterbench.acts.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.rack.Board.AtRisk;
import counterbench.claims.Ageing;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.Whereabouts;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The order of the living board and its totals. */
class BoardTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-04-10");
    private static final Instant NOW = Instant.parse("2026-04-10T17:00:00Z");

    private static Finding found(Rule rule) {
        return new Finding(
                rule, "NORTH", null, Subject.of(SubjectKind.CORE, "C"), null, "said", "shown");
    }

    private static BoardLine line(
            String core,
            CoreState state,
            NextStep next,
            @Nullable String shipBy,
            String charge,
            Rule... findings) {
        return new BoardLine(
                core,
                "J-1",
                "QM-26-014",
                new CoreStatus(state, NOW.minus(Duration.ofDays(core.length()))),
                next,
                null,
                next == NextStep.WAIT ? NOW.plusSeconds(core.length() * 60L) : null,
                0,
                5,
                shipBy == null ? null : LocalDate.parse("2026-03-12"),
                shipBy == null ? null : LocalDate.parse(shipBy),
                null,
                new Whereabouts(Whereabouts.Place.IN_YARD, "NORTH", null, NOW),
                null,
                new BigDecimal(charge),
                List.of(findings).stream().map(BoardTest::found).toList());
    }

    @Test
    void what_needs_a_hand_first_stands_first_in_whatever_order_it_comes() {
        List<BoardLine> ordered =
                List.of(
                        line(
                                "stop",
                                CoreState.PACKED,
                                NextStep.PUT_RIGHT,
                                null,
                                "1",
                                Rule.PLUGS_SHORT),
                        line("late", CoreState.PLUGGED, NextStep.PACK, "2026-04-01", "1"),
                        line("dear", CoreState.DRAINED, NextStep.PLUG, "2026-04-12", "9"),
                        line("cheap", CoreState.DRAINED, NextStep.PLUG, "2026-04-12", "1"),
                        line("open job", CoreState.DRAINING, NextStep.END_DRAIN, null, "9"),
                        line("w", CoreState.DRAINING, NextStep.WAIT, null, "1"),
                        line("ww", CoreState.DRAINING, NextStep.WAIT, "2026-04-01", "9"),
                        line(
                                "sent long ago",
                                CoreState.SHIPPED,
                                NextStep.ANSWER,
                                "2026-05-01",
                                "1"),
                        line("sent", CoreState.RECEIVED, NextStep.ANSWER, "2026-03-01", "9"),
                        line("done", CoreState.ACCEPTED, NextStep.NOTHING, "2026-03-01", "9"));
        for (long seed = 1; seed <= 20; seed++) {
            List<BoardLine> shuffled = new ArrayList<>(ordered);
            Collections.shuffle(shuffled, new Random(seed));

            assertThat(new Board(shuffled).lines()).as("seed " + seed).isEqualTo(ordered);
        }
    }

    @Test
    void charges_at_risk_are_those_of_cores_that_have_not_left_and_whose_day_comes() {
        Board board =
                new Board(
                        List.of(
                                line("a", CoreState.PLUGGED, NextStep.PACK, "2026-04-09", "1"),
                                line("b", CoreState.PLUGGED, NextStep.PACK, "2026-04-10", "10"),
                                line("c", CoreState.PLUGGED, NextStep.PACK, "2026-04-17", "100"),
                                line("d", CoreState.PLUGGED, NextStep.PACK, "2026-04-18", "1000"),
                                line("e", CoreState.PACKED, NextStep.ADD, "2026-05-10", "10000"),
                                line("f", CoreState.PACKED, NextStep.ADD, null, "9"),
                                line("g", CoreState.SHIPPED, NextStep.ANSWER, "2026-04-11", "9")));

        assertThat(board.late(TODAY)).isEqualTo(new AtRisk(1, new BigDecimal("1")));
        assertThat(board.within(7, TODAY)).isEqualTo(new AtRisk(2, new BigDecimal("110")));
        assertThat(board.within(14, TODAY)).isEqualTo(new AtRisk(3, new BigDecimal("1110")));
        assertThat(board.within(30, TODAY)).isEqualTo(new AtRisk(4, new BigDecimal("11110")));
        assertThat(board.byState())
                .isEqualTo(
                        Map.of(
                                CoreState.PLUGGED, 4,
                                CoreState.PACKED, 2,
                                CoreState.SHIPPED, 1));
    }

    @Test
    void the_minute_that_has_begun_is_still_to_be_waited() {
        BoardLine line = line("w", CoreState.DRAINING, NextStep.WAIT, null, "1");

        assertThat(line.minutesLeft(NOW)).hasValue(1L);
        assertThat(line.minutesLeft(NOW.plusSeconds(59))).hasValue(1L);
        assertThat(line.minutesLeft(NOW.plusSeconds(60))).hasValue(0L);
        assertThat(line.minutesLeft(NOW.plusSeconds(600))).hasValue(0L);
    }

    @Test
    void what_is_owed_is_told_by_campaign_and_age() {
        List<Owed> owed =
                List.of(
                        owed("B", 0, "1"),
                        owed("A", 30, "10"),
                        owed("A", 31, "100"),
                        owed("A", 60, "1000"),
                        owed("A", 90, "3"),
                        new Owed("A", TODAY.minusDays(91), new BigDecimal("4"), true));

        assertThat(Exposure.of(owed, TODAY))
                .containsExactly(
                        exposure("A", Ageing.UP_TO_30, 1, 0, "10"),
                        exposure("A", Ageing.UP_TO_60, 2, 0, "1100"),
                        exposure("A", Ageing.UP_TO_90, 1, 0, "3"),
                        exposure("A", Ageing.OLDER, 1, 1, "4"),
                        exposure("B", Ageing.UP_TO_30, 1, 0, "1"));
    }

    private static Owed owed(String campaign, long days, String charge) {
        return new Owed(campaign, TODAY.minusDays(days), new BigDecimal(charge), false);
    }

    private static Exposure exposure(
            String campaign, Ageing age, int cores, int missing, String charge) {
        return new Exposure(campaign, age, cores, missing, new BigDecimal(charge));
    }
}
