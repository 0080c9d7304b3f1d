package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What expires, and what a campaign needs, in the invented garage. */
class ForesightOfStockTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_expires_stands_with_the_expired_first(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            hal.line("part receive HB-3015 10 --lot K-1 --expires 2026-05-01");
            hal.line("part receive HB-3015 10 --lot K-2 --expires 2026-04-09");
            hal.line("part issue HB-3015 4 N-155");

            assertThat(hal.line("expiry --within 21d --format csv").out().lines())
                    .containsExactly(
                            "expires_on,days_left,kit,part,lot,quantity",
                            "2026-04-09,-1,,HB-3015,K-2,10",
                            "2026-05-01,21,,HB-3015,K-1,6");
            assertThat(hal.line("expiry --within 20 --format csv").out().lines()).hasSize(2);
            assertThat(hal.line("expiry --within 365d --format csv").out().lines())
                    .contains("2026-10-28,201,FP-1053,HB-3010-K,FP2603,1");
            assertThat(hal.line("expiry --within soon").status()).isEqualTo(Status.USAGE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_campaign_needs_kits_for_its_open_vehicles_and_loose_parts_for_its_jobs(
            TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            counter.open("N-170");

            // 59 listed, 47 completed or not needed, 5 scrapped, exported or unreachable.
            assertThat(hal.line("need HB-0417").out().lines().map(String::stripTrailing))
                    .containsSubsequence(
                            "Vehicles of HB-0417, site NORTH",
                            "listed  done  cannot come  open  open jobs  jobs without kit",
                            "    59    47            5     7          3                 1",
                            "Kits for HB-0417, site NORTH",
                            "HB-3010-K        1              7               1        2        0"
                                    + "           2         0");
            hal.line("kit issue --job N-170 --first");
            hal.line("kit short FP-1052 HB-3012 1");

            assertThat(hal.line("need HB-0417 --format csv").out().lines())
                    .contains("parts,NORTH,HB-0417,,,,,,,HB-3012,,,,,,,0,,1,0,N-170");
            assertThat(hal.line("need HB-0429 --format json").out())
                    .contains("\"in_date\":\"5\"")
                    .contains("\"on_order\":\"6\",\"expected_on\":\"2026-04-21\"");
            assertThat(hal.line("need HB-04l7").err()).endsWith("did you mean HB-0417?\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void labels_may_be_scanned_instead_of_typing(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            String label = "\"(240)HB-3010-K(17)261128(10)FP2604(21)FP-1104\"";
            String sealant = "\"(240)HB-3015(17)261031(10)S-77\"";

            assertThat(hal.line("kit receive " + label).out()).startsWith("kit FP-1104 received");
            assertThat(hal.line("kit show " + label).out())
                    .contains("part      HB-3010-K\nlot       FP2604\nexpires   2026-11-28\n");
            assertThat(hal.line("kit issue " + label + " \"(91)N-155\"").out())
                    .startsWith("kit FP-1104 issued to job N-155");
            assertThat(hal.line("part receive " + sealant + " 5").out()).startsWith("5 mL HB-3015");
            assertThat(hal.line("part issue " + sealant + " 2 N-155").status())
                    .isEqualTo(Status.DONE);
            assertThat(hal.line("count " + sealant + " 3").out())
                    .startsWith("counted 3 mL HB-3015, as the book says");
            assertThat(hal.line("kit receive " + label.replace("1104", "1105") + " --lot X").err())
                    .startsWith("lot \"FP2604\" and \"X\": labels and line do not say the same; ");
            assertThat(hal.line("kit receive \"(91)N-155\"").err())
                    .contains("this is no label of a kit");
            assertThat(hal.line("kit receive FP-1108").err())
                    .endsWith("nothing says which kit it is; say its part number with --part\n");
        }
    }
}
