package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.told;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.month.BalanceCommand;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drains, plugs and packs cores in the invented garage, by whole lines. */
class CoreActsTest {
    private static FakeShell rackOf(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.OTIS,
                new CoreRemoveCommand(larkmere::store, larkmere.sites()),
                new DrainBeginCommand(larkmere::store, larkmere.sites()),
                new DrainEndCommand(larkmere::store, larkmere.sites()),
                new PlugCommand(larkmere::store, larkmere.sites()),
                new UnplugCommand(larkmere::store, larkmere.sites()),
                new PackCommand(larkmere::store, larkmere.sites()),
                new BalanceCommand(larkmere::store, larkmere.sites()));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_goes_from_the_vehicle_into_its_box(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell rack = rackOf(larkmere);

            assertThat(told(rack, "core remove NC-0090 --job N-155 --serial 7P288001"))
                    .isEqualTo("core NC-0090 removed on job N-155\n");
            assertThat(told(rack, "drain begin NC-0090"))
                    .isEqualTo("core NC-0090 drains until 2026-04-10 12:18 (18 min)\n");
            rack.at(Larkmere.AS_OF.plus(Duration.ofMinutes(18)));
            assertThat(told(rack, "drain end NC-0090"))
                    .isEqualTo("drain of core NC-0090 ended, 18 min at the longest\n");
            assertThat(told(rack, "plug NC-0090"))
                    .startsWith("core NC-0090 plugged, 4 of 4 plugs in it\n");
            assertThat(told(rack, "pack NC-0090 --packaging carton"))
                    .isEqualTo("core NC-0090 packed, carton\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_drain_that_ends_too_early_is_recorded_and_can_be_put_right(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell rack = rackOf(larkmere);

            assertThat(told(rack, "drain end NC-0075"))
                    .isEqualTo(
                            "drain of core NC-0075 ended, 10 min at the longest\n"
                                    + "its longest drain that counts is 10 min, and 18 min are"
                                    + " required: drain it again for the whole time, then plug"
                                    + " it\n");
            assertThat(told(rack, "plug NC-0075 4"))
                    .contains("unplug NC-0075, drain it again for the whole time, then plug it");
            assertThat(told(rack, "pack NC-0075 --packaging bag"))
                    .contains("stop drain-short: core NC-0075: the longest drain period is 10 min")
                    .contains("fix core-packaging: core NC-0075: packaging is \"bag\"");
            rack.at(Larkmere.AS_OF.plus(Duration.ofMinutes(5)));
            assertThat(told(rack, "unplug NC-0075"))
                    .startsWith("core NC-0075 unplugged, 0 of 4 plugs in it\n");
            told(rack, "drain begin NC-0075");
            rack.at(Larkmere.AS_OF.plus(Duration.ofMinutes(23)));
            assertThat(told(rack, "drain end NC-0075")).endsWith("18 min at the longest\n");
            assertThat(told(rack, "plug NC-0075"))
                    .startsWith("core NC-0075 plugged, 4 of 4 plugs in it\n")
                    .doesNotContain("required");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void plugs_on_the_bench_go_onto_the_core_once(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell rack = rackOf(larkmere);
            String bench = "balance --account \"BENCH(N-168)\" --part HB-5125 --format csv";
            String before = rack.line(bench).out();

            told(rack, "plug NC-0074");
            String plugged = rack.line(bench).out();
            told(rack, "unplug NC-0074");
            told(rack, "plug NC-0074 2");

            assertThat(rack.line(bench).out()).isEqualTo(plugged);
            assertThat(before).isNotEqualTo(plugged);
            assertThat(rack.line("balance --account \"CORE(NC-0074)\" --format csv").out())
                    .isEqualTo("site,account,part,quantity\r\nNORTH,CORE(NC-0074),HB-5125,2\r\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_cannot_be_is_refused_with_the_way_out(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell rack = rackOf(larkmere);

            assertThat(rack.line("drain end NC-0073").err())
                    .isEqualTo(
                            "core \"NC-0073\": no drain of it is open at 2026-04-10 12:00; begin one"
                                    + " with drain begin NC-0073, if need be with --at\n");
            assertThat(rack.line("unplug NC-0073 3").err())
                    .isEqualTo(
                            "core \"NC-0073\", 3 plugs: 2 plugs are in it at 2026-04-10 12:00;"
                                    + " record first what was plugged (plug), or say when with"
                                    + " --at\n");
            assertThat(rack.line("plug NC-0073").err())
                    .startsWith("core \"NC-0073\": 2 of 2 plugs are in it already; ");
            assertThat(rack.line("plug NC-0073 0").err())
                    .startsWith("plugs \"0\" of core NC-0073: that is no number of plugs; ");
            assertThat(rack.line("drain begin NC-0079").err())
                    .startsWith("core \"NC-0079\": there is no such core; did you mean NC-00");
            assertThat(rack.line("drain begin NC-0070").err())
                    .isEqualTo(
                            "core \"NC-0070\": it left at 2026-04-02 15:30; say with --at what was"
                                    + " done before that\n");
            assertThat(rack.line("drain begin NC-0075 --at \"2026-04-10 11:40\"").err())
                    .startsWith("core \"NC-0075\": it was removed later, at 2026-04-10 11:45; ");
            assertThat(rack.line("core remove NC-0075 --job N-169 --serial 1").err())
                    .isEqualTo(
                            "core \"NC-0075\": a core of that tag was removed on job N-169 at"
                                    + " 2026-04-10 11:45; give this one a tag of its own\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_begin_while_a_drain_is_open_is_recorded_and_said(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            assertThat(told(rackOf(larkmere), "drain begin NC-0075"))
                    .isEqualTo(
                            "core NC-0075 drains until 2026-04-10 12:18 (18 min)\n"
                                    + "the drain begun at 2026-04-10 11:50 counts no more"
                                    + " from here on; time runs anew\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_was_done_earlier_is_recorded_late_in_any_order(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell rack = rackOf(larkmere);

            told(
                    rack,
                    "core remove NC-0090 --job N-150 --serial 7P288001 --at \"2026-03-08 01:40\"");
            told(rack, "plug NC-0090 4 --at \"2026-03-08 03:30\"");
            told(rack, "drain begin NC-0090 --at \"2026-03-08 01:50\"");

            assertThat(told(rack, "drain end NC-0090 --at \"2026-03-08 03:02\""))
                    .startsWith("drain of core NC-0090 ended, 12 min at the longest\n")
                    .contains("18 min are required: unplug NC-0090, drain it again");
        }
    }
}
