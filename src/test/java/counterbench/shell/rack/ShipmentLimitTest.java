package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.OPEN;
import static counterbench.shell.rack.RackShells.done;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.care.ReverseCommand;
import counterbench.shell.people.ShipmentLimitCommand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a shipment weighs against the site's limit. A pound is 0.453 592 37 kg exactly (NIST SP 811,
 * appendix B.8), so that 10 kg lie between 22.046 lb and 22.047 lb.
 */
class ShipmentLimitTest {
    private static FakeShell lead(Larkmere larkmere) {
        return larkmere.shellOf(
                RackShells.MAREN,
                new BaseCommand[] {
                    new ShipmentLimitCommand(larkmere::store, larkmere.sites()),
                    new ReverseCommand(larkmere::store, larkmere.sites())
                });
    }

    private static FakeShell filled(Larkmere larkmere) {
        FakeShell hal = RackShells.hal(larkmere);
        done(hal, OPEN);
        done(hal, "shipment add SH-N14 NC-0001 NC-0072");
        return hal;
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_weighs_more_than_the_limit_stays_here(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            assertThat(done(lead(larkmere), "shipment limit \"10 kg\"").out())
                    .startsWith("a shipment may weigh up to 10 kg: entry ");
            FakeShell hal = filled(larkmere);

            assertThat(hal.line("ship SH-N14 --weight \"22.047 lb\"").messages())
                    .containsExactly(
                            "shipment \"SH-N14\": it weighs 22.047 lb, and the site lets 10 kg go;"
                                    + " take a core off it: shipment take-off SH-N14",
                            "shipment \"SH-N14\": it stays here while that stands against it; put it"
                                    + " right, or take those cores off (shipment take-off); the lead"
                                    + " may let it go with --override REASON");
            assertThat(hal.line("shipment show SH-N14").out()).doesNotContain("left at");
            done(hal, "ship SH-N14 --weight \"22.046 lb\"");
        }
    }

    @Test
    void a_limit_in_pounds_holds_for_what_was_weighed_in_kilograms_core_by_core() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell maren = RackShells.maren(larkmere);
            done(lead(larkmere), "shipment limit \"22.046 lb\"");
            FakeShell hal = filled(larkmere);
            done(hal, "pack NC-0001 --packaging carton --weight \"4.5 kg\"");
            done(hal, "pack NC-0072 --packaging carton --weight \"5.5 kg\"");

            assertThat(hal.line("ship SH-N14").err())
                    .contains("it weighs 10 kg, and the site lets 22.046 lb go");
            assertThat(done(maren, "ship SH-N14 --override \"the carrier agreed\"").out())
                    .contains("shipment SH-N14 shipped, 2 cores, 10 kg, by override");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_lead_sets_the_limit_anew_and_the_journal_still_holds(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = lead(larkmere);

            assertThat(maren.line("shipment limit --none").err())
                    .isEqualTo(
                            "shipment limit of site \"NORTH\": it sets none; nothing is left to"
                                    + " do\n");
            done(maren, "shipment limit \"30 kg\"");
            assertThat(maren.line("shipment limit \"30.0 kg\"").err()).contains("30 kg already");
            String entry =
                    done(maren, "shipment limit \"66 lb\"")
                            .out()
                            .replaceAll("\\D*66 lb: entry (\\d+).*\n", "$1");
            assertThat(maren.line("reverse " + entry + " --reason \"too low\"").err())
                    .contains("set its limit anew with shipment limit");
            assertThat(maren.line("shipment limit").status()).isEqualTo(Status.USAGE);
            assertThat(maren.line("shipment limit \"9 kg\" --none").status())
                    .isEqualTo(Status.USAGE);
            assertThat(maren.line("shipment limit \"0 kg\"").err()).contains("16.2 kg");
            FakeShell hal =
                    larkmere.shellOf(
                            Larkmere.HAL,
                            new ShipmentLimitCommand(larkmere::store, larkmere.sites()));
            assertThat(hal.line("shipment limit --none").err()).contains("for the role lead");
        }
    }
}
