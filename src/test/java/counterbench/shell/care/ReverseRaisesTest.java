package counterbench.shell.care;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.claims.CreditMatchCommand;
import counterbench.shell.counter.KitIssueCommand;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.rack.DrainEndCommand;
import counterbench.shell.rack.PackCommand;
import counterbench.shell.rack.PlugCommand;
import counterbench.shell.rack.UnplugCommand;
import counterbench.shell.review.FindingSettleCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A reversal says what it raises, as other acts do. */
class ReverseRaisesTest {
    private static final String BOTH = "counterbench.db.TestStores#both";

    @TempDir Path folder;

    private static FakeShell maren(Larkmere larkmere) {
        return larkmere.shellOf(
                new Person("Maren", Set.of(Role.LEAD)),
                new ReverseCommand(larkmere::store, larkmere.sites()),
                new ImportCommand(larkmere::store, larkmere.sites()),
                new KitIssueCommand(larkmere::store, larkmere.sites()),
                new DrainEndCommand(larkmere::store, larkmere.sites()),
                new PlugCommand(larkmere::store, larkmere.sites()),
                new UnplugCommand(larkmere::store, larkmere.sites()),
                new PackCommand(larkmere::store, larkmere.sites()),
                new CreditMatchCommand(larkmere::store, larkmere.sites()),
                new FindingSettleCommand(larkmere::store, larkmere.sites()));
    }

    private static String entryOf(FakeShell.Output made) {
        assertThat(made.status()).as(made.err()).isEqualTo(Status.DONE);
        return (made.out() + made.err()).replaceAll("(?s).*entry ([0-9]+) of.*", "$1");
    }

    private static List<String> reversed(FakeShell shell, String what) {
        FakeShell.Output output = shell.line("reverse " + what + " --reason \"wrong\"");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        return output.messages();
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_drain_that_is_taken_back_leaves_its_packed_core_without_one(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            maren.at(Larkmere.AS_OF.plus(Duration.ofHours(1)));
            String drained = entryOf(maren.line("drain end NC-0075"));
            maren.line("plug NC-0075 3");
            maren.line("pack NC-0075 --packaging carton");
            assertThat(reversed(maren, drained))
                    .last()
                    .asString()
                    .startsWith("stop drain-not-logged: core NC-0075: ");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_match_that_is_taken_back_leaves_its_credit_and_its_claim(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            String matched = entryOf(maren.line("credit match RM-0227-N/35 --claim CN-001=412.36"));
            assertThat(reversed(maren, matched))
                    .anyMatch(line -> line.startsWith("fix credit-unmatched: "));
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void what_stood_before_or_concerns_nobody_is_not_told(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            Path orders =
                    Files.writeString(
                            folder.resolve("orders.csv"),
                            "order,part,quantity,ordered_on\nO-77,HB-3013,4,2026-04-05\n");
            String ordered = entryOf(maren.line("import " + orders));
            assertThat(reversed(maren, ordered)).hasSize(2);
            String packed = entryOf(maren.line("pack NC-0072 --packaging carton"));
            assertThat(reversed(maren, packed)).hasSize(2);
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void of_what_concerns_all_jobs_the_review_is_named(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            Path due =
                    Files.writeString(
                            folder.resolve("instruments.csv"),
                            "instrument,kind,unit\nTW-77,torque wrench,N·m\n");
            String bought = entryOf(maren.line("import " + due));
            assertThat(reversed(maren, bought))
                    .endsWith("it concerns too much to say here what it raises: review lists that");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void of_very_much_only_the_first_are_told(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            StringBuilder receipts = new StringBuilder("part,quantity,received_at\n");
            StringBuilder moves = new StringBuilder("event,at,part,quantity\n");
            for (int i = 1; i <= 12; i++) {
                receipts.append("ZZ-").append(i).append(",2,2026-04-08 08:00\n");
                moves.append("scrapped,2026-04-08 09:00,ZZ-").append(i).append(",1\n");
            }
            StringBuilder parts = new StringBuilder("part,name,unit\n");
            for (int i = 1; i <= 12; i++) {
                parts.append("ZZ-").append(i).append(",Clip,each\n");
            }
            maren.line("import " + Files.writeString(folder.resolve("parts.csv"), parts));
            String came =
                    entryOf(
                            maren.line(
                                    "import "
                                            + Files.writeString(
                                                    folder.resolve("receipts.csv"), receipts)));
            maren.line("import " + Files.writeString(folder.resolve("moves.csv"), moves));
            List<String> told = reversed(maren, came);
            assertThat(told).filteredOn(l -> l.startsWith("fix balance-negative: ")).hasSize(10);
            assertThat(told).endsWith("2 findings more: review lists them");
        }
    }

    /** A washer that a refitted one spared lies on the bench of N-107. */
    @ParameterizedTest
    @MethodSource(BOTH)
    void a_settlement_that_is_taken_back_opens_its_finding_again_if_it_holds(TestStores stores)
            throws IOException {
        String settle = "finding settle F-Z9T4XPWS9Y --reason \"it is in the drawer\"";
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell shell = maren(larkmere);
            assertThat(reversed(shell, entryOf(shell.line(settle))))
                    .contains("finding F-Z9T4XPWS9Y is open again");
            String again = entryOf(shell.line(settle));
            Path uses = folder.resolve("uses.csv");
            Files.writeString(
                    uses,
                    "job,part,quantity,condition,at\nN-107,HB-3013,1,scrapped,2026-01-31 12:00\n");
            assertThat(shell.run(List.of("import", uses.toString())).status())
                    .isEqualTo(Status.DONE);
            assertThat(reversed(shell, again))
                    .contains(
                            "finding F-Z9T4XPWS9Y does not hold any more, so nothing is open"
                                    + " again");
        }
    }
}
