package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Kits in and out of the invented garage by whole command lines. */
class KitCommandsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void kits_are_received_together_and_once(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            var received =
                    hal.line(
                            "kit receive FP-2001 FP-2002 --part HB-3010-K --expires 2026-11-28"
                                    + " --lot FP2604 --cost 348.50 --document DN-0414-N");

            assertThat(received.screen())
                    .isEqualTo("2 kits, FP-2001, FP-2002, received: entry 9 of site NORTH\n");
            assertThat(counter.balance(Larkmere.NORTH, "KIT(FP-2002)", "HB-3013")).isEqualTo("4");
            assertThat(hal.line("kit receive FP-2001 FP-2003 --part HB-3010-K").err())
                    .isEqualTo(
                            "kit \"FP-2001\": the site has it already, and it is on the shelf; look"
                                    + " at the label again; kit show FP-2001 tells its life\n");
            assertThat(counter.head(Larkmere.NORTH)).isEqualTo(9);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_a_kit_lacks_is_said_on_receipt_or_when_it_is_found(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(
                            hal.line("kit receive FP-2003 --part HB-3010-K --missing \"HB-3013:1\"")
                                    .messages())
                    .containsExactly(
                            "Flange sealant HB-3015 has a shelf life, and no last usable day was"
                                    + " said; import it later with a sheet called kits",
                            "fix kit-incomplete: kit FP-2003 (HB-3010-K) came without 1 of HB-3013"
                                    + " on 2026-04-10");
            assertThat(hal.line("kit short FP-2003 HB-3013 2").out())
                    .isEqualTo("kit FP-2003 is short of 2 HB-3013: entry 10 of site NORTH\n");
            assertThat(counter.balance(Larkmere.NORTH, "KIT(FP-2003)", "HB-3013")).isEqualTo("1");
            assertThat(hal.line("kit short FP-2003 HB-3013 2").err())
                    .startsWith(
                            "kit FP-2003 short of 2 HB-3013: by the book only 1 of it can be"
                                    + " missing; ");
            assertThat(hal.line("kit short FP-2003 HB-3O13 1").err())
                    .endsWith("the kit came without any such part; did you mean HB-3013?\n");
            assertThat(hal.line("kit short FP-1001 HB-3013 1").status()).isEqualTo(Status.REFUSED);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_a_kit_lacks_is_said_when_it_is_issued(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            counter.open("N-170");
            hal.line(
                    "kit receive FP-2003 --part HB-3010-K --missing \"HB-3013:1; HB-3016:2\""
                            + " --expires 2026-11-28");
            hal.line("kit short FP-2003 HB-3013 2");
            hal.line("kit receive FP-2004 --part HB-3010-K --expires 2026-11-28");

            assertThat(hal.line("kit issue FP-2003 N-170").messages())
                    .contains("kit FP-2003 is short of 3 HB-3013, 2 HB-3016");
            assertThat(hal.line("kit issue FP-2004 N-170").err()).doesNotContain("is short of");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_receipt_that_cannot_be_is_refused_and_changes_nothing(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("kit receive FP-3 FP-3 --part HB-3010-K").err())
                    .isEqualTo("kit \"FP-3\": it is named twice; name it once\n");
            assertThat(hal.line("kit receive FP-3 --part HB-3O10-K").err())
                    .endsWith("no loaded pack has a kit of that part; did you mean HB-3010-K?\n");
            assertThat(hal.line("kit receive FP-3 --part HB-3010-K --missing \"HB-3013:9\"").err())
                    .contains("kit part HB-3010-K holds 4 of it");
            assertThat(hal.line("kit receive FP-3 --part HB-3010-K --missing HB-3013").err())
                    .startsWith("--missing \"HB-3013\" is no list of parts and quantities");
            assertThat(hal.line("kit receive FP-3 --part HB-3010-K --revision Z").err())
                    .endsWith("no loaded pack of that revision has the kit; there are A, B\n");
            assertThat(hal.line("kit receive FP-3 --part HB-3010-K --cost=-1").err())
                    .contains("it is below zero");
            assertThat(counter.head(Larkmere.NORTH)).isEqualTo(8);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_kit_that_expires_first_is_proposed(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            counter.open("N-170");
            hal.line("kit receive FP-2001 --part HB-3010-K --expires 2026-04-09");
            hal.line("kit receive FP-2002 --part HB-3010-K --expires 2026-06-01");

            assertThat(hal.line("kit issue --job N-170").err())
                    .isEqualTo(
                            "kit issue --job N-170: kit FP-2002 (until 2026-06-01) of HB-3010-K"
                                    + " expires first; add --first to take it, or say kit issue"
                                    + " FP-2002 N-170\n");
            assertThat(hal.line("kit issue FP-1052 N-170").messages())
                    .containsExactly(
                            "kit FP-2002 (until 2026-06-01) expires sooner and is on the shelf");
            assertThat(hal.line("kit issue --job N-170").err())
                    .startsWith("a kit for job N-170: the job has all the kits that its campaign");
            assertThat(hal.line("kit issue --job N-170 --part HB-3010-K --first").out())
                    .startsWith("kit FP-2002 issued to job N-170: ");
            assertThat(hal.line("kit issue FP-2002").status()).isEqualTo(Status.USAGE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void on_a_terminal_the_proposed_kit_is_taken_when_confirmed(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north().onScreen(100);
            counter.open("N-170");

            assertThat(hal.line("kit issue --job N-170", "no").err())
                    .endsWith("was not taken; name the kit instead: kit issue KIT N-170\n");
            assertThat(hal.line("kit issue --job N-170", "yes").out())
                    .contains("kit FP-1052 issued to job N-170: entry 10 of site NORTH");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void kits_travel_to_another_site_and_arrive_there(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            FakeShell ines = counter.south();

            assertThat(hal.line("kit send FP-1052 --to SOTH").err())
                    .isEqualTo("site \"SOTH\": the store has no such site; did you mean SOUTH?\n");
            assertThat(hal.line("kit send FP-1052 --to NORTH").err())
                    .startsWith("site \"NORTH\": that is this site; ");
            assertThat(ines.line("kit arrive FP-1052 --from NORTH").err())
                    .startsWith(
                            "kit \"FP-1052\" from site NORTH: no site of the store has sent it"
                                    + " here; ");
            assertThat(hal.line("kit send FP-1052 --to SOUTH --document TR-1").out())
                    .isEqualTo("kit FP-1052 sent to site SOUTH: entry 9 of site NORTH\n");
            assertThat(ines.line("kit receive FP-1052 --part HB-3010-K").err())
                    .endsWith("not from the supplier; say kit arrive FP-1052 --from NORTH\n");
            assertThat(ines.line("kit arrive FP-1052 RD-0548 --from NORTH").out())
                    .startsWith("2 kits, FP-1052, RD-0548, arrived from site NORTH: ");
            assertThat(counter.balance(Larkmere.SOUTH, "KIT(FP-1052)", "HB-3013")).isEqualTo("4");
            assertThat(ines.line("kit arrive FP-1052 --from NORTH").err())
                    .contains("this site had it already, and it is on the shelf");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_kit_leaves_the_shelf_once(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("kit return FP-1052 --document RT-1 --reason wet").out())
                    .startsWith("kit FP-1052 sent back to the supplier: ");
            assertThat(hal.line("kit scrap FP-1052 --reason wet").err())
                    .startsWith(
                            "kit \"FP-1052\" into the scrap: the kit was sent back to the"
                                    + " supplier; ");
            assertThat(hal.line("kit scrap FP-1053 --reason wet").status()).isEqualTo(Status.DONE);
            assertThat(hal.line("kit issue FP-1053 N-155").err()).contains("the kit was scrapped");
            assertThat(hal.line("kit scrap FP-1049 --reason wet").err())
                    .contains("the kit is issued to job N-164; put it back there first");
            assertThat(hal.line("kit scrap FP-1051").status()).isEqualTo(Status.USAGE);
        }
    }
}
