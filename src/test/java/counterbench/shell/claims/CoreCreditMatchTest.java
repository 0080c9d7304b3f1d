package counterbench.shell.claims;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.rack.RackCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CoreCreditMatchTest {
    @TempDir Path folder;

    private static FakeShell quinn(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.QUINN,
                new CreditMatchCommand(larkmere::store, larkmere.sites()),
                new ClaimShowCommand(larkmere::store, larkmere.sites()),
                new ImportCommand(larkmere::store, larkmere.sites()),
                new RackCommand(larkmere::store, larkmere.sites()));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_credit_pays_no_claim_too_much(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line(
                    "import "
                            + Files.writeString(
                                    folder.resolve("credits.csv"),
                                    """
                                    remittance,line,amount,paid_on,core,kind
                                    RM-C,1,395.00,2026-04-09,NC-OO25,core
                                    """));

            var matched = quinn.line("credit match RM-C/1 --claim CN-016");

            assertThat(matched.err())
                    .contains("credit RM-C/1, 395.00, goes to claim CN-016\n")
                    .contains("core credit RM-C/1 clears the charge of core NC-0025\n")
                    .doesNotContain("too much");
            assertThat(quinn.line("claim show CN-016 --format csv").out())
                    .contains("core credit,RM-C/1 for core NC-0025,2026-04-09,395.00");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_credit_with_a_slip_is_tied_to_its_core_and_the_charge_is_cleared(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line(
                    "import "
                            + Files.writeString(
                                    folder.resolve("credits.csv"),
                                    """
                                    remittance,line,amount,paid_on,claim,core,kind
                                    RM-C,1,330.00,2026-04-09,CN-059,NC-O071,core
                                    RM-C,2,395.00,2026-04-09,,ZZ-7,core
                                    """));
            assertThat(quinn.line("rack --format csv").out()).contains("NC-0071,N-165,");

            var matched = quinn.line("credit match");

            assertThat(matched.err())
                    .contains("credit RM-C/1, 330.00, goes to claim CN-059\n")
                    .contains("core credit RM-C/1 clears the charge of core NC-0071\n")
                    .contains(
                            "core credit RM-C/2 names no core that we know: if the core's job is"
                                    + " claimed, name its claim (credit match RM-C/2 --claim CLAIM);"
                                    + " else reverse its line (journal show) and import it with the"
                                    + " core's tag\n");
            assertThat(quinn.line("rack --all --format csv").out())
                    .contains("NC-0071,N-165,TK-2605,credited,");
        }
    }
}
