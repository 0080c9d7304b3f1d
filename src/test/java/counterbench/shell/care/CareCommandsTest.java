package counterbench.shell.care;

import static counterbench.TypedProgram.SETUP;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.TypedProgram;
import counterbench.db.TestStores;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Journal, backups and home, as typed. */
class CareCommandsTest {
    private static final String BOTH = "counterbench.db.TestStores#both";

    @TempDir Path folder;

    private static TypedProgram signedIn(TestStores kind) {
        TypedProgram program = TypedProgram.withNew(kind);
        program.done(SETUP, "2468");
        program.done("sign-in Ada", "2468");
        program.done("person add Ben --role parts", "8642");
        return program;
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void the_journal_is_shown_newest_first_and_an_entry_line_by_line(TestStores kind) {
        try (TypedProgram program = signedIn(kind)) {
            List<String> entries = program.done("journal show --format csv").lines().toList();
            assertThat(entries).hasSize(3);
            assertThat(entries.get(1)).startsWith("2,").contains("person add,2,");
            assertThat(entries.get(2)).startsWith("1,").contains("Ada,setup,3,");
            assertThat(program.done("journal show --last 1 --format csv").lines()).hasSize(2);
            TypedProgram.Output entry = program.type("journal show 2 --format csv");
            assertThat(entry.messages().get(0))
                    .startsWith("entry 2 of site NORTH, ")
                    .endsWith(", Ada: person add Ben --role parts");
            assertThat(entry.out().lines().toList().get(1))
                    .isEqualTo("2.1,people,\"name Ben, roles parts\",,");
            assertThat(program.type("journal show 9").messages())
                    .containsExactly(
                            "entry \"9\": site NORTH has no such entry; journal show lists the"
                                    + " newest");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void an_entry_is_reversed_with_a_reason_and_says_so(TestStores kind) {
        try (TypedProgram program = signedIn(kind)) {
            assertThat(program.type("reverse 2.1").status()).isEqualTo(Status.USAGE);
            TypedProgram.Output reversal = program.type("reverse 2.1 --reason \"never came\"");
            assertThat(reversal.out())
                    .isEqualToIgnoringNewLines("2.1 is reversed: entry 3 of site NORTH");
            assertThat(reversal.messages()).hasSize(2);
            assertThat(reversal.messages().get(0))
                    .startsWith("entry 2 of site NORTH, ")
                    .endsWith(", Ada: person add Ben --role parts");
            assertThat(reversal.messages().get(1))
                    .isEqualTo("taken back: 2.1 people: name Ben, roles parts");
            assertThat(program.done("journal show 2 --format csv")).contains("reversed by 3");
            assertThat(program.done("journal show --format csv"))
                    .contains("reverses 2")
                    .contains("1 of its facts reversed");
            assertThat(program.done("person list --format csv")).doesNotContain("Ben");
            assertThat(program.done("journal verify --format csv")).contains("NORTH,holds,3,6,");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_reversal_of_many_facts_says_how_many_of_which_kinds_are_left_to_it(TestStores kind)
            throws IOException {
        Path parts = folder.resolve("parts.csv");
        Files.writeString(parts, "part,name,unit\nA-1,Ring,each\nA-2,Bolt,each\nA-3,Paste,mL\n");
        Path orders = folder.resolve("orders.csv");
        Files.writeString(
                orders,
                """
                order,part,quantity,ordered_on
                O-1,A-1,4,2026-01-05
                O-2,A-2,1,2026-01-05
                O-3,A-1,2,2026-01-06
                O-4,A-2,2,2026-01-07
                """);
        try (TypedProgram program = signedIn(kind)) {
            program.done("import '" + folder + "'");
            assertThat(program.type("reverse 3.7 --reason \"written twice\"").messages().get(1))
                    .isEqualTo(
                            "taken back: 3.7 orders: order O-4, part A-2, quantity 2, ordered_on"
                                    + " 2026-01-07");
            List<String> rest = program.type("reverse 3 --reason \"of another yard\"").messages();
            assertThat(rest.get(0)).endsWith(", Ada: import " + folder);
            assertThat(rest.get(1))
                    .isEqualTo(
                            "taken back: 6 of its 7 facts (3 parts, 3 orders); journal show 3"
                                    + " lists them");
        }
    }

    @Test
    void a_reversal_tells_a_document_in_one_line() {
        try (TypedProgram program = signedIn(TestStores.H2)) {
            program.done("campaign load demo-data/packs/HB-0429-A.yaml");
            assertThat(program.type("reverse 3 --reason \"not in force\"").messages())
                    .hasSize(3)
                    .element(1)
                    .asString()
                    .startsWith("taken back: 3.1 packs: campaign HB-0429, revision A, file ")
                    .endsWith(" characters)");
            assertThat(program.type("reverse 3.2 --reason x").messages().get(0))
                    .contains("the entry has 1 fact; ");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_long_entry_is_shown_page_by_page_and_whole_where_asked(TestStores kind)
            throws IOException {
        StringBuilder parts = new StringBuilder("part,name,unit\n");
        for (int i = 1; i <= 250; i++) {
            parts.append("A-").append(i).append(",Ring,each\n");
        }
        Files.writeString(folder.resolve("parts.csv"), parts);
        try (TypedProgram program = signedIn(kind)) {
            program.done("import '" + folder + "'");
            TypedProgram.Output page = program.type("journal show 3");
            assertThat(page.out()).contains("3.1 ", "3.100 ").doesNotContain("3.101");
            assertThat(page.messages().get(2))
                    .isEqualTo(
                            "facts 1 to 100 of 250; for the next: journal show 3 --from 101, for"
                                    + " all: --all");
            TypedProgram.Output end = program.type("journal show 3 --from 151");
            assertThat(end.out()).contains("3.151 ", "3.250 ").doesNotContain("3.150 ");
            assertThat(end.messages()).hasSize(2);
            assertThat(program.done("journal show 3 --all").lines()).hasSize(252);
            assertThat(program.done("journal show 3 --format csv").lines()).hasSize(251);
            assertThat(program.done("journal show 3 --from 201 --format csv").lines()).hasSize(51);
            assertThat(program.type("journal show 3 --from 251").messages())
                    .containsExactly(
                            "--from \"251\": entry 3 has facts 1 to 250; say one of these");
            assertThat(program.type("journal show 3 --from 0").status()).isEqualTo(Status.REFUSED);
            assertThat(program.type("journal show --from 3").status()).isEqualTo(Status.USAGE);
            assertThat(program.type("journal show 3 --last 5").status()).isEqualTo(Status.USAGE);
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_backup_is_restored_into_another_home(TestStores kind) {
        Path file = folder.resolve("store.zip");
        try (TypedProgram program = signedIn(kind)) {
            assertThat(program.done("backup '" + file + "'")).contains("is written");
            assertThat(program.type("backup '" + file + "'").status()).isEqualTo(Status.REFUSED);
            assertThat(program.type("restore '" + file + "'").messages().get(0))
                    .contains("the store is not empty");
        }
        for (TestStores other : TestStores.values()) {
            try (TypedProgram program = TypedProgram.withNew(other)) {
                assertThat(program.done("restore '" + file + "'"))
                        .contains("site NORTH: all 2 entries hold");
                program.done("sign-in Ben", "8642");
                assertThat(program.type("restore '" + file + "'").status())
                        .isEqualTo(Status.REFUSED);
            }
        }
    }

    @Test
    void a_backup_that_is_not_there_is_said_to_be_missing() {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            assertThat(program.type("restore nowhere.zip").messages().get(0))
                    .endsWith("nowhere.zip\": there is no such file; take another backup");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_journal_of_one_entry_is_said_to_hold(TestStores kind) {
        Path file = folder.resolve("store.zip");
        try (TypedProgram program = TypedProgram.withNew(kind)) {
            program.done(SETUP, "2468");
            assertThat(program.done("check-home --format csv"))
                    .contains("journal of NORTH,good,its only entry holds,");
            program.done("backup '" + file + "'");
        }
        try (TypedProgram program = TypedProgram.withNew(kind)) {
            assertThat(program.done("restore '" + file + "'"))
                    .containsPattern("as they were on [-0-9]{10}T[:0-9]{8}Z\\n")
                    .contains("site NORTH: its only entry holds, the last with hash ");
        }
    }

    @ParameterizedTest
    @MethodSource(BOTH)
    void a_home_in_order_has_nothing_bad(TestStores kind) {
        try (TypedProgram program = TypedProgram.withNew(kind)) {
            assertThat(program.done("check-home --format csv")).contains("no site is set up yet");
        }
        try (TypedProgram program = signedIn(kind)) {
            program.done("backup");
            assertThat(program.done("check-home --format csv"))
                    .contains("journal of NORTH,good,all 2 entries hold,")
                    .contains(",good,\"whole: ")
                    .doesNotContain(",bad,");
        }
    }

    @Test
    void what_is_bad_is_named_with_what_to_do() throws IOException {
        try (TypedProgram program = signedIn(TestStores.H2)) {
            program.done("backup");
            Path home = program.home();
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxr-xr-x"));
            Path backup = onlyFile(home.resolve("backups"));
            byte[] bytes = Files.readAllBytes(backup);
            Files.write(backup, java.util.Arrays.copyOf(bytes, bytes.length / 2));
            Files.writeString(home.resolve("backups/half.zip.begun"), "");
            TypedProgram.Output output = program.type("check-home --format csv");
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.out())
                    .contains("home folder,bad,others on this machine may use it")
                    .contains("chmod 700")
                    .contains("delete it, and type backup to write another one")
                    .contains("half.zip.begun,note,it was begun and not finished");
        }
    }

    @Test
    void a_store_that_cannot_be_used_ends_with_4() throws IOException {
        Path home;
        try (TypedProgram program = signedIn(TestStores.H2)) {
            home = program.home();
        }
        Files.writeString(home.resolve("store.mv.db"), "not a store at all");
        try (TypedProgram program = TypedProgram.at(home)) {
            TypedProgram.Output output = program.type("check-home --format csv");
            assertThat(output.status()).isEqualTo(Status.UNUSABLE);
            assertThat(output.out()).contains("store,bad,");
            assertThat(program.type("journal verify").status()).isEqualTo(Status.UNUSABLE);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"backup", "restore 'none.zip'", "journal verify", "reverse 1 --reason x"})
    void before_the_store_is_set_up_nothing_breaks(String line) {
        try (TypedProgram program = TypedProgram.withNew(TestStores.H2)) {
            TypedProgram.Output output = program.type(line);
            assertThat(output.status()).isIn(Status.DONE, Status.REFUSED);
            assertThat(output.err()).doesNotContain("internal error");
        }
    }

    private static Path onlyFile(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findFirst().orElseThrow();
        }
    }
}
