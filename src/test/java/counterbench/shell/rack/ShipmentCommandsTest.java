package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.OPEN;
import static counterbench.shell.rack.RackShells.told;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Opens, fills and sends shipments in the invented garage, by whole lines. */
class ShipmentCommandsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_shipment_is_opened_filled_with_what_may_go_and_sent(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);

            assertThat(told(hal, OPEN)).isEqualTo("shipment SH-N14 is open\n");
            assertThat(hal.line("shipment add SH-N14").err())
                    .isEqualTo(
                            "shipment add SH-N14: these may go: NC-0001 (by 2026-02-04), NC-0072 (by"
                                    + " 2026-04-30); add --proposed to take them, or name the"
                                    + " cores\n");
            assertThat(told(hal, "shipment add SH-N14 --proposed"))
                    .isEqualTo("cores NC-0001, NC-0072 on shipment SH-N14\n");
            assertThat(told(hal, "shipment take-off SH-N14 NC-0072"))
                    .isEqualTo("NC-0072 taken off shipment SH-N14\n");
            assertThat(told(hal, "shipment add SH-N14 (92)NC-0072"))
                    .isEqualTo("core NC-0072 on shipment SH-N14\n");
            assertThat(told(hal, "ship SH-N14 --weight \"16.2 kg\""))
                    .isEqualTo(
                            "shipment SH-N14 shipped, 2 cores, 16.2 kg\n"
                                    + "Rules for fuel-wetted parts are the shipper's to check; a"
                                    + " logged drain is no permission.\n"
                                    + "fix core-overdue: core NC-0001: due by 2026-02-04, shipped on"
                                    + " 2026-04-10\n");
            assertThat(hal.line("rack --state shipped --format csv").out())
                    .contains("NC-0001,N-101,HB-0417,shipped,2026-04-10 12:00,answer")
                    .contains("NC-0072,N-167,HB-0417,shipped,2026-04-10 12:00,answer");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_with_an_open_stop_holds_its_shipment_until_it_is_put_right(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);
            told(hal, OPEN);
            told(hal, "drain end NC-0075");
            told(hal, "plug NC-0075 3");
            told(hal, "pack NC-0075 --packaging carton --weight \"7.4 kg\"");

            assertThat(told(hal, "shipment add SH-N14 NC-0072 NC-0075"))
                    .startsWith("cores NC-0072, NC-0075 on shipment SH-N14\n")
                    .contains(
                            "may not be shipped: core NC-0075: the longest drain period is 10 min, 18"
                                    + " min required (drain-short); unplug NC-0075, drain it for 18"
                                    + " min (drain begin, drain end), plug NC-0075\n");
            var refused = hal.line("ship SH-N14");
            assertThat(refused.status()).isEqualTo(Status.REFUSED);
            assertThat(refused.messages())
                    .containsExactly(
                            "core \"NC-0075\": drain-short, the longest drain period is 10 min, 18"
                                    + " min required; unplug NC-0075, drain it for 18 min (drain"
                                    + " begin, drain end), plug NC-0075",
                            "core \"NC-0075\": plugs-short, 3 of 4 plugs are logged; close what is"
                                    + " open and record it: plug NC-0075",
                            "shipment \"SH-N14\": it stays here while that stands against it; put"
                                    + " it right, or take those cores off (shipment take-off); the"
                                    + " lead may let it go with --override REASON");
            told(hal, "unplug NC-0075");
            told(hal, "drain begin NC-0075");
            hal.at(Larkmere.AS_OF.plus(Duration.ofMinutes(18)));
            told(hal, "drain end NC-0075");
            told(hal, "plug NC-0075 4");
            assertThat(told(hal, "ship SH-N14"))
                    .startsWith(
                            "shipment SH-N14 shipped, 2 cores, 7.4 kg\n1 of its cores were not");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_that_nobody_drained_or_packed_does_not_slip_through(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);
            told(hal, OPEN);
            told(hal, "core remove NC-0090 --job N-155 --serial 7P288001");

            assertThat(told(hal, "shipment add SH-N14 NC-0090"))
                    .contains("core NC-0090 is not packed yet: pack NC-0090 --packaging TEXT\n");
            assertThat(hal.line("ship SH-N14").err())
                    .contains("core \"NC-0090\": drain-not-logged, no drain period is logged")
                    .contains("or record with --at the drain that was not written down")
                    .contains("core \"NC-0090\": plugs-short, 0 of 4 plugs are logged");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void only_a_lead_may_override_and_the_reason_is_a_fact(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);
            FakeShell maren = RackShells.maren(larkmere);
            told(hal, OPEN);
            told(hal, "shipment add SH-N14 NC-0074");

            assertThat(hal.line("ship SH-N14 --override \"no time\"").err())
                    .isEqualTo(
                            "ship: this is for the role lead, and Hal has parts; sign in as somebody with that role\n");
            assertThat(told(maren, "ship SH-N14 --override \"the caps are in the same box\""))
                    .startsWith("shipment SH-N14 shipped, 1 core, by override\n");
            assertThat(overrides(larkmere))
                    .containsExactly(
                            "ship",
                            "SH-N14",
                            "the caps are in the same box",
                            "core NC-0074: plugs-short, 0 of 2 plugs are logged");
        }
    }

    private static List<Object> overrides(Larkmere larkmere) {
        return larkmere.store()
                .read(
                        sql ->
                                Objects.requireNonNull(
                                                sql.fetchOne(
                                                        "select gate, subject, reason, findings"
                                                                + " from overrides_fact"))
                                        .intoList());
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_that_is_on_it_already_is_named_and_the_others_are_put_on(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);
            told(hal, OPEN);
            told(hal, "shipment add SH-N14 NC-0072");
            assertThat(told(hal, "shipment add SH-N14 NC-0072 NC-0001"))
                    .startsWith("core NC-0001 on shipment SH-N14\ncore NC-0072 is on it already\n");
            assertThat(hal.line("shipment add SH-N14 NC-0072 NC-0001").err())
                    .isEqualTo(
                            "shipment add SH-N14: cores NC-0072, NC-0001 are on it already; nothing"
                                    + " is left to do\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_the_return_centre_said_already_is_not_recorded_once_more(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            String row = "acknowledge SH-N13 received NC-0O70 --serial 7P1 --as-written";
            told(maren, row);
            assertThat(maren.line(row).err())
                    .isEqualTo(
                            "core \"NC-0O70\", serial \"7P1\" of shipment SH-N13: that they received"
                                    + " it is recorded already, as said at 2026-04-10 12:00 (fact"
                                    + " 9.1); nothing is left to do; if it is wrong, reverse 9.1"
                                    + " --reason TEXT\n");
            told(maren, "acknowledge SH-N13 rejected NC-0O70 --reason cracked --as-written");
            told(maren, "acknowledge SH-N13 rejected NC-0O70 --reason leaking --as-written");
            assertThat(
                            maren.line(
                                            "acknowledge SH-N13 rejected NC-0O70 --reason leaking"
                                                    + " --as-written")
                                    .status())
                    .isEqualTo(Status.REFUSED);
            told(maren, "reverse 9.1 --reason \"another one\"");
            told(maren, row);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_cannot_be_is_refused_with_the_way_out(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = RackShells.hal(larkmere);
            told(hal, OPEN);

            assertThat(hal.line(OPEN).err())
                    .startsWith("shipment \"SH-N14\": there is one of that name, with Two Rivers");
            assertThat(hal.line("ship SH-N14").err())
                    .isEqualTo(
                            "shipment \"SH-N14\": no core is on it; put some onto it: shipment add"
                                    + " SH-N14\n");
            assertThat(hal.line("ship SH-N15").err())
                    .startsWith(
                            "shipment \"SH-N15\": there is no such shipment; did you mean SH-N05?");
            assertThat(hal.line("shipment add SH-N13 NC-0072").err())
                    .isEqualTo(
                            "shipment \"SH-N13\": it left at 2026-04-02 15:30; open another one:"
                                    + " shipment open\n");
            assertThat(hal.line("shipment add SH-N14 NC-0070").err())
                    .startsWith("core \"NC-0070\": it left at 2026-04-02 15:30; ");
            told(hal, "shipment add SH-N14 NC-0072");
            assertThat(hal.line("shipment add SH-N14 NC-0072").err())
                    .isEqualTo(
                            "shipment add SH-N14: core NC-0072 is on it already; nothing is left to"
                                    + " do\n");
            assertThat(hal.line("ship SH-N14 --at \"2026-04-10 11:00\"").err())
                    .isEqualTo(
                            "core \"NC-0072\": it was added later, at 2026-04-10 12:00; say with --at"
                                    + " when it was shipped\n");
            assertThat(hal.line("ship SH-N14 --weight 16").err()).contains("\"16.2 kg\"");
            assertThat(hal.line("ship SH-N14 --override \"why not\"").status())
                    .isEqualTo(Status.REFUSED);
            assertThat(RackShells.maren(larkmere).line("ship SH-N14 --override \"why not\"").err())
                    .isEqualTo(
                            "shipment \"SH-N14\": nothing stands against it; leave --override out and"
                                    + " ship it\n");
            assertThat(RackShells.otis(larkmere).line("ship SH-N14").status())
                    .isEqualTo(Status.REFUSED);
            told(hal, "ship SH-N14");
            assertThat(hal.line("ship SH-N14").err()).startsWith("shipment \"SH-N14\": it left at");
        }
    }
}
