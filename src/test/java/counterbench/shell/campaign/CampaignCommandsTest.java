package counterbench.shell.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CampaignCommandsTest {
    private static final Path PACKS = Path.of("src/test/resources/counterbench/campaign");
    private static final String EXPECT = "# expect: ";

    @TempDir Path folder;

    static List<Path> bad() throws IOException {
        return files("bad");
    }

    static List<Path> doubtful() throws IOException {
        return files("doubtful");
    }

    private static List<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(PACKS.resolve(folder))) {
            return files.sorted().toList();
        }
    }

    private static FakeShell withoutStore() {
        return new FakeShell(new CampaignCheckCommand());
    }

    private static List<String> expected(Path file, String before) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> line.startsWith(EXPECT))
                .map(line -> before + file.getFileName() + ":" + line.substring(EXPECT.length()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("bad")
    void check_refuses_a_bad_pack_with_the_place_of_every_problem(Path file) throws IOException {
        FakeShell.Output output = withoutStore().run(List.of("campaign", "check", file.toString()));
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.out()).isEmpty();
        assertThat(output.messages()).containsAll(expected(file, ""));
    }

    @ParameterizedTest
    @MethodSource("doubtful")
    void check_warns_of_a_doubtful_pack_and_passes_it(Path file) throws IOException {
        FakeShell.Output output = withoutStore().run(List.of("campaign", "check", file.toString()));
        assertThat(output.status()).isEqualTo(Status.DONE);
        assertThat(output.messages()).isEqualTo(expected(file, "warning: "));
        assertThat(output.out()).contains("is in order");
    }

    @Test
    void check_reads_all_files_and_tells_of_each() {
        FakeShell.Output output =
                withoutStore()
                        .line(
                                "campaign check demo-data/packs"
                                        + " src/test/resources/counterbench/campaign/bad/cycle.yaml"
                                        + " nowhere.yaml");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.out().lines()).hasSize(6);
        assertThat(output.messages())
                .anyMatch(
                        m ->
                                m.startsWith(
                                        "src/test/resources/counterbench/campaign/bad/cycle.yaml:"));
        assertThat(output.messages())
                .contains(
                        "pack \"nowhere.yaml\": the file cannot be read; check its name and that"
                                + " you may read it");
    }

    @Test
    void packs_are_loaded_the_oldest_first_and_known_again() {
        try (Larkmere larkmere = Larkmere.empty(TestStores.H2)) {
            FakeShell shell = larkmere.shellOf("Quinn", Role.WARRANTY);
            FakeShell.Output output = shell.line("campaign load demo-data/packs");
            assertThat(output.status()).isEqualTo(Status.DONE);
            assertThat(output.out())
                    .isEqualTo(
                            """
                            campaign HB-0417 revision A, in force from 2025-12-01: loaded as entry 1 of site NORTH
                            campaign HB-0429 revision A, in force from 2025-12-01: loaded as entry 2 of site NORTH
                            campaign HB-0433 revision A, in force from 2025-12-01: loaded as entry 3 of site NORTH
                            campaign TK-2605 revision 1, in force from 2025-12-01: loaded as entry 4 of site NORTH
                            campaign HB-0417 revision B, in force from 2026-02-16: loaded as entry 5 of site NORTH
                            campaign TK-2605 revision 2, in force from 2026-03-02: loaded as entry 6 of site NORTH
                            """);
            assertThat(shell.line("campaign load demo-data/packs/HB-0417-A.yaml").out())
                    .isEqualTo(
                            "campaign HB-0417 revision A, in force from 2025-12-01: known"
                                    + " already\n");
        }
    }

    @Test
    void of_several_packs_all_are_loaded_or_none() throws IOException {
        String first = Files.readString(Path.of("demo-data/packs/HB-0433-A.yaml"));
        Path a = Files.writeString(folder.resolve("A.yaml"), first);
        Path b =
                Files.writeString(
                        folder.resolve("B.yaml"), first.replace("revision: A", "revision: B"));
        String refusal =
                "campaign HB-0433 revision B, in force from 2025-12-01: revision A is in force from"
                        + " 2025-12-01; revisions come one after the other, each in force later"
                        + " than the one before";
        FakeShell.Output checked =
                withoutStore().run(List.of("campaign", "check", folder.toString()));
        assertThat(checked.status()).isEqualTo(Status.REFUSED);
        assertThat(checked.messages()).containsExactly(refusal);
        try (Larkmere larkmere = Larkmere.empty(TestStores.H2)) {
            FakeShell shell = larkmere.shellOf("Quinn", Role.WARRANTY);
            FakeShell.Output both =
                    shell.run(List.of("campaign", "load", b.toString(), a.toString()));
            assertThat(both.status()).isEqualTo(Status.REFUSED);
            assertThat(both.out()).isEmpty();
            assertThat(both.messages()).containsExactly(refusal);
            assertThat(shell.run(List.of("campaign", "load", b.toString())).out())
                    .as("nothing of the two had been loaded")
                    .contains("loaded as entry 1 of site NORTH");
        }
    }

    @Test
    void a_pack_comes_with_its_list_of_vehicles_or_not_at_all() throws IOException {
        String pack = Files.readString(Larkmere.DATA.resolve("packs/HB-0429-A.yaml"));
        Path file = Files.writeString(folder.resolve("bus.yaml"), pack + "\nvehicles: buses.csv\n");
        Path list = Files.writeString(folder.resolve("buses.csv"), "campaign,vin\nHB-0999,\n");
        try (Larkmere larkmere = Larkmere.empty(TestStores.H2)) {
            FakeShell shell = larkmere.shellOf("Maren", Role.LEAD);
            FakeShell.Output refused = shell.run(List.of("campaign", "load", file.toString()));
            assertThat(refused.status()).isEqualTo(Status.REFUSED);
            assertThat(refused.messages())
                    .anyMatch(m -> m.startsWith("buses.csv, row 2, vin"))
                    .last()
                    .asString()
                    .startsWith("campaign HB-0429 revision A")
                    .contains("1 row was refused, and nothing was recorded");
            assertThat(shell.line("campaign list").out()).isEqualTo("none\n");
            Files.writeString(list, "campaign,vin\nHB-0429,0WBSH08D3NA001077\n");
            assertThat(shell.run(List.of("campaign", "load", file.toString())).out())
                    .contains("loaded as entry 1 of site NORTH, with 1 vehicle\n");
        }
    }

    @Test
    void check_and_load_say_alike_that_a_list_of_vehicles_is_missing() throws IOException {
        String pack = Files.readString(Larkmere.DATA.resolve("packs/HB-0429-A.yaml"));
        Path file = Files.writeString(folder.resolve("bus.yaml"), pack + "\nvehicles: buses.csv\n");
        long line = pack.lines().count() + 2;
        String refusal =
                line
                        + ":11: vehicles \"buses.csv\": there is no such file beside the pack; put"
                        + " it there, or leave the key vehicles out and import the list as a"
                        + " sheet";
        assertThat(withoutStore().run(List.of("campaign", "check", file.toString())).messages())
                .containsExactly("bus.yaml:" + refusal);
        Path other = Files.writeString(folder.resolve("other.yaml"), "title: x\n");
        assertThat(withoutStore().run(List.of("campaign", "check", folder.toString())).messages())
                .contains(file + ":" + refusal)
                .anyMatch(m -> m.startsWith(other + ":1:1: "));
        try (Larkmere larkmere = Larkmere.empty(TestStores.H2)) {
            FakeShell shell = larkmere.shellOf("Maren", Role.LEAD);
            assertThat(shell.run(List.of("campaign", "load", file.toString())).messages())
                    .containsExactly("bus.yaml:" + refusal);
            assertThat(shell.line("campaign list").out()).isEqualTo("none\n");
        }
    }

    @Test
    void loading_is_for_warranty_or_the_lead() {
        try (Larkmere larkmere = Larkmere.empty(TestStores.H2)) {
            FakeShell.Output output =
                    larkmere.shellOf("Hal", Role.PARTS).line("campaign load demo-data/packs");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.messages())
                    .containsExactly(
                            "campaign load: this is for the role warranty, and Hal has parts; sign"
                                    + " in as somebody with that role");
            assertThat(larkmere.shell().line("campaign load demo-data/packs").err())
                    .contains("nobody is signed in");
        }
    }

    @Test
    void show_tells_the_terms_of_the_newest_revision_or_of_the_one_asked_for() {
        try (Larkmere larkmere = Larkmere.withPacks(TestStores.H2)) {
            FakeShell shell = larkmere.shell();
            String newest = shell.line("campaign show HB-0417").out();
            assertThat(newest)
                    .startsWith("campaign HB-0417 revision B, in force from 2026-02-16\n")
                    .contains("Cautions\n", "never feel for a leak by hand")
                    .contains("  4 HB-3013 Seal ring 16 mm, new each time, replaces HB-3003\n")
                    .contains("47 N·m (34.67 lbf·ft)")
                    .contains("drain at least 18 min, then 4 plugs\n");
            assertThat(shell.line("campaign show HB-0417 --revision A").out())
                    .contains("  3 HB-3013 ", "drain at least 14 min");
        }
    }

    @Test
    void a_campaign_or_revision_that_is_not_loaded_is_refused_with_what_is_near() {
        try (Larkmere larkmere = Larkmere.withPacks(TestStores.H2)) {
            FakeShell shell = larkmere.shell();
            assertThat(shell.line("campaign show HB-0471").err())
                    .isEqualTo(
                            "campaign \"HB-0471\": no pack of it is loaded; did you mean"
                                    + " HB-0417?\n");
            assertThat(shell.line("campaign show HB-0417 --revision 7").err())
                    .isEqualTo(
                            "revision \"7\": the campaign has no such revision; there are A, B\n");
        }
    }
}
