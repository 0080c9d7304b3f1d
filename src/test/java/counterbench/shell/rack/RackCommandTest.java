package counterbench.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.rack.BoardLine;
import counterbench.acts.store.ReadRack;
import counterbench.cores.CoreState;
import counterbench.db.TestStores;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.shared.Site;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The living board of the invented garage. */
class RackCommandTest {
    private static FakeShell shellOf(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.HAL,
                new RackCommand(larkmere::store, larkmere.sites()),
                new DrainEndCommand(larkmere::store, larkmere.sites()));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_board_shows_what_every_core_waits_for(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = shellOf(larkmere);

            assertThat(hal.line("rack --format csv").out().lines())
                    .containsExactly(
                            "core,job,campaign,state,since,next,drains_until,minutes_left,"
                                    + "drain_minutes,plugs,plugs_required,ship_by,days_left,charge,"
                                    + "shipment,findings,yard",
                            "NC-0044,N-141,HB-0429,rejected,2026-03-09 09:03,put right,,,19,2,2,"
                                    + "2026-03-22,,210.00,SH-N08,\"stop drain-short, stop core-rejected\",",
                            "NC-0001,N-101,HB-0417,packed,2026-01-05 10:40,add to shipment,,,17,"
                                    + "4,4,2026-02-04,-65,395.00,,fix core-overdue,NORTH",
                            "NC-0072,N-167,HB-0417,packed,2026-03-31 11:54,add to shipment,,,24,"
                                    + "4,4,2026-04-30,20,395.00,,,NORTH",
                            "NC-0073,N-168,HB-0429,plugged,2026-04-09 13:29,pack,,,28,2,2,,,"
                                    + "210.00,,,NORTH",
                            "NC-0074,N-168,HB-0429,drained,2026-04-09 13:26,plug,,,29,0,2,,,"
                                    + "210.00,,,NORTH",
                            "NC-0075,N-169,HB-0417,draining,2026-04-10 11:50,wait,2026-04-10 12:08,8,"
                                    + ",0,4,,,395.00,,,NORTH",
                            "NC-0038,N-135,HB-0417,shipped,2026-02-19 15:30,answer,,,19,4,4,"
                                    + "2026-03-20,,395.00,SH-N07,note core-unacknowledged,",
                            "NC-0070,N-164,HB-0417,received,2026-04-08 10:00,answer,,,20,4,4,"
                                    + "2026-04-25,,395.00,SH-N13,,",
                            "NC-0071,N-165,TK-2605,received,2026-04-08 10:01,answer,,,49,5,5,"
                                    + "2026-04-24,,330.00,SH-N13,,");
            assertThat(hal.line("rack").messages())
                    .containsExactly(
                            "9 cores: 1 draining, 1 drained, 1 plugged, 2 packed, 1 shipped, 2"
                                    + " received, 1 rejected",
                            "charges at risk: 395.00 USD (1 core) late already; 0.00 USD (0 cores)"
                                    + " in 7 days, 0.00 USD (0 cores) in 14 days, 395.00 USD (1"
                                    + " core) in 30 days");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_drain_that_was_long_enough_asks_for_a_hand(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = shellOf(larkmere);
            String line = "rack --state draining --state plugged --state drained --format csv";

            assertThat(hal.line(line).out())
                    .contains("draining,2026-04-10 11:50,wait,2026-04-10 12:08,8");
            hal.at(Larkmere.AS_OF.plus(Duration.ofMinutes(8)));
            assertThat(hal.line(line).out())
                    .contains("draining,2026-04-10 11:50,end drain,2026-04-10 12:08,0");
            hal.line("drain end NC-0075");
            assertThat(hal.line(line).out())
                    .contains("NC-0075,N-169,HB-0417,drained,2026-04-10 12:08,plug,,,18,0,4");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void charges_are_told_by_campaign_and_age_with_cores_that_were_never_removed(
            TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = shellOf(larkmere);

            assertThat(hal.line("rack --charges --format csv").out().lines())
                    .containsExactly(
                            "campaign,age,cores,never_removed,charge,currency",
                            "HB-0417,up to 30 days,2,0,790.00,USD",
                            "HB-0417,31 to 60 days,1,0,395.00,USD",
                            "HB-0417,over 90 days,1,0,395.00,USD",
                            "HB-0429,31 to 60 days,1,0,210.00,USD",
                            "HB-0429,over 90 days,1,1,210.00,USD",
                            "TK-2605,up to 30 days,1,0,330.00,USD");
            assertThat(hal.line("rack --charges --campaign TK-2605").err())
                    .isEqualTo("330.00 USD owed for cores that are not accepted yet\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_quick_board_is_what_the_whole_site_says(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            for (Site site : List.of(Larkmere.NORTH, Larkmere.SOUTH)) {
                List<StatedFinding> findings =
                        new FindingBook(larkmere.store())
                                .now(site, Larkmere.AS_OF, f -> true, n -> {});
                ReadRack rack = new ReadRack(larkmere.store(), site, Larkmere.AS_OF);

                assertThat(onTheirWay(rack.undecided(findings, n -> {})))
                        .isNotEmpty()
                        .isEqualTo(onTheirWay(rack.all(findings, n -> {})));
            }
        }
    }

    private static List<BoardLine> onTheirWay(List<BoardLine> lines) {
        return lines.stream()
                .filter(line -> line.status().state() != CoreState.ACCEPTED)
                .filter(line -> line.status().state() != CoreState.CREDITED)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_cannot_be_shown_is_refused(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = shellOf(larkmere);

            assertThat(hal.line("rack --charges --all").status()).isEqualTo(Status.USAGE);
            assertThat(hal.line("rack --state shiped").err()).contains("did you mean shipped?");
            assertThat(hal.line("rack --campaign HB-0418").err()).contains("did you mean HB-0417?");
        }
    }
}
