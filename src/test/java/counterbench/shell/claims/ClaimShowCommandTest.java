package counterbench.shell.claims;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.intake.ImportCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClaimShowCommandTest {
    @TempDir Path folder;

    private static FakeShell quinn(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.QUINN,
                new ImportCommand(larkmere::store, larkmere.sites()),
                new ClaimShowCommand(larkmere::store, larkmere.sites()));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_claim_is_shown_with_its_lines_its_credits_and_apart_from_them_those_of_its_cores(
            TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            var shown = quinn.line("claim show CN-008 --format csv");

            assertThat(shown.out().lines())
                    .containsExactly(
                            "line,what,day,amount",
                            "labour,2.7 h,,318.60",
                            "parts,,,561.11",
                            "core charge,,,330.00",
                            "total,,2026-01-21,1209.71",
                            "credit,\"RM-0213-N/15, names CN-008\",2026-02-13,950.11",
                            "open,,,259.60",
                            "core credit,RM-0213-N/16 for core NC-0013,2026-02-13,330.00");
            assertThat(shown.err())
                    .isEqualTo(
                            "claim CN-008 for job N-112: paid differently\n"
                                    + "core credits clear the charge that is owed for a core and pay"
                                    + " no part of the claim\n");
            assertThat(quinn.line("claim show CN-O08").err()).contains("did you mean CN-008?");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_claim_whose_core_charge_came_as_a_core_credit_alone_says_why_it_is_paid_differently(
            TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            Path credits =
                    Files.writeString(
                            folder.resolve("credits.csv"),
                            """
                            remittance,line,amount,paid_on,claim,core,kind
                            RM-Z,1,887.81,2026-04-09,CN-059,,claim
                            RM-Z,2,330.00,2026-04-09,,NC-0071,
                            """);
            assertThat(quinn.line("import " + credits).status()).isEqualTo(Status.DONE);

            var shown = quinn.line("claim show CN-059 --format csv");

            assertThat(shown.out())
                    .contains("open,,,330.00\r\n")
                    .contains("core credit,RM-Z/2 for core NC-0071,2026-04-09,330.00\r\n");
            assertThat(shown.err())
                    .contains("claim CN-059 for job N-165: paid differently\n")
                    .contains("what is open came as core credits: ");
        }
    }
}
