package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Issues kits in the invented garage. */
class KitIssueCommandTest {
    private static FakeShell hal(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.HAL, new KitIssueCommand(larkmere::store, larkmere.sites()));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_kit_from_the_shelf_goes_to_a_job_once(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = hal(larkmere);

            var issued = hal.line("kit issue FP-1052 N-169");

            assertThat(issued.status()).isEqualTo(Status.DONE);
            assertThat(issued.screen())
                    .startsWith("kit FP-1052 issued to job N-169: entry ")
                    .endsWith(" of site NORTH\n");
            assertThat(hal.line("kit issue FP-1052 N-155").err())
                    .isEqualTo(
                            "kit \"FP-1052\" to job N-155: the kit is issued to job N-169; put it"
                                    + " back there first (put-back), or take another kit\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_cannot_be_is_refused_and_changes_nothing(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell hal = hal(larkmere);

            assertThat(hal.line("kit issue FP-1052 N-170").err())
                    .isEqualTo("job \"N-170\": there is no such job; did you mean N-107?\n");
            assertThat(hal.line("kit issue FP-9999 N-169").err())
                    .startsWith("kit \"FP-9999\": there is no such kit; ");
            assertThat(hal.line("kit issue FP-1052 N-101").err())
                    .startsWith("kit \"FP-1052\" to job N-101: job N-101 was completed; ");
            assertThat(hal.line("kit issue FP-1052 N-169 --at 2027-01-01T00:00Z").err())
                    .contains("that time has not come yet");
            assertThat(hal.line("kit issue FP-1052 N-169 --by Nobody").err())
                    .contains("by \"Nobody\": nobody of that name is known");
            assertThat(hal.line("kit issue FP-1052 N-169").status()).isEqualTo(Status.DONE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void it_is_for_the_counter_and_the_bench(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn =
                    larkmere.shellOf(
                            Larkmere.QUINN, new KitIssueCommand(larkmere::store, larkmere.sites()));

            assertThat(quinn.line("kit issue FP-1052 N-169").err())
                    .isEqualTo(
                            "kit issue: this is for the role parts or technician, and Quinn has"
                                    + " warranty; sign in as somebody with that role\n");
        }
    }
}
