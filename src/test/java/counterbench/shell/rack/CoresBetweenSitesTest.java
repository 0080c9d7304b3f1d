package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.done;
import static counterbench.shell.rack.RackShells.told;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.care.store.VerifyJournal;
import counterbench.db.TestStores;
import counterbench.shared.Site;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Runner;
import counterbench.shell.Status;
import counterbench.shell.Transcript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cores go from yard to yard, as it is typed and seen. */
class CoresBetweenSitesTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void cores_go_to_another_yard_and_back_as_written_down(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);

            Transcript.of("cores-between-sites")
                    .replay(new Runner(maren.commands()), maren.circumstances());

            for (Site site : List.of(Larkmere.NORTH, Larkmere.SOUTH)) {
                assertThat(new VerifyJournal(larkmere.store()).run(site, Larkmere.AS_OF).broken())
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void of_two_cores_of_one_tag_the_owner_decides(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            done(maren, "core remove NC-0072 --job S-218 --serial 7P288002 --site SOUTH");
            done(maren, "core send NC-0072 --to NORTH --site SOUTH");
            assertThat(told(maren, "core arrive NC-0072"))
                    .isEqualTo("core NC-0072 of site SOUTH arrived at site NORTH\n");
            done(maren, "core send NC-0072 --to SOUTH --site SOUTH");
            done(maren, "core send NC-0072 NC-0001 --to SOUTH");

            var unclear = maren.line("core arrive NC-0072 NC-0001 --site SOUTH");
            assertThat(unclear.status()).isEqualTo(Status.REFUSED);
            assertThat(unclear.messages())
                    .containsExactly(
                            "core \"NC-0072\": cores of NORTH and SOUTH bear that tag, and each is"
                                    + " on the way here; say whose it is: --of NORTH or --of SOUTH");
            assertThat(told(maren, "core arrive NC-0072 --of NORTH --site SOUTH"))
                    .isEqualTo("core NC-0072 of site NORTH arrived at site SOUTH\n");
            assertThat(told(maren, "core arrive NC-0072 NC-0001 --site SOUTH").lines())
                    .containsExactly(
                            "core NC-0072 of site SOUTH arrived at site SOUTH",
                            "core NC-0001 of site NORTH arrived at site SOUTH");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void of_several_owners_cores_all_arrive_or_none(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            String earlier = " --at \"2026-04-10 11:50\"";
            done(maren, "core remove SC-90 --job S-218 --serial 7P288002 --site SOUTH" + earlier);
            done(maren, "core send SC-90 --to NORTH --site SOUTH" + earlier);
            done(maren, "core send NC-0072 --to SOUTH --at \"2026-04-02 09:00\"");
            done(maren, "core arrive NC-0072 --site SOUTH --at \"2026-04-03 09:00\"");
            done(maren, "core send NC-0072 --to NORTH" + earlier);
            done(maren, "core arrive NC-0072");
            String board = done(maren, "rack --site SOUTH --format csv").out();

            var refused = maren.line("core arrive SC-90 NC-0072 --at \"2026-04-10 11:55\"");

            assertThat(refused.messages())
                    .containsExactly(
                            "core \"NC-0072\" of site NORTH at site NORTH: it arrived at 2026-04-10"
                                    + " 12:00; nothing is left to do");
            assertThat(refused.status()).isEqualTo(Status.REFUSED);
            assertThat(done(maren, "rack --site SOUTH --format csv").out()).isEqualTo(board);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void sheets_bring_both_events_and_are_refused_by_name(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            Path bad =
                    sheet(
                            "cores-bad.csv",
                            "NC-0072,sent,2026-04-02 09:00,,",
                            "NC-0072,arrived,2026-04-03 09:00,,",
                            "NC-0072,plugged,2026-04-03 10:00,1,SOUTH");
            var refused = maren.line("import \"" + bad + "\"");
            assertThat(refused.status()).isEqualTo(Status.REFUSED);
            assertThat(refused.screen())
                    .contains("row 2, other_site: is empty; say which site")
                    .contains("row 3, other_site: is empty; say which site")
                    .contains(
                            "row 4, other_site \"SOUTH\": belongs to sent and arrived rows only;"
                                    + " leave it empty");

            Path good =
                    sheet(
                            "cores-good.csv",
                            "NC-0072,plugged,2026-04-02 12:00,1,",
                            "NC-0072,sent,2026-04-02 09:00,,SOUTH");
            done(maren, "import \"" + good + "\"");
            assertThat(done(maren, "rack --state in-transit --format csv").out().lines().skip(1))
                    .containsExactly(
                            "NC-0072,N-167,HB-0417,in-transit,2026-04-02 09:00,arrive,,,24,5,4,"
                                    + "2026-04-30,20,395.00,,,SOUTH");
            done(maren, "core arrive NC-0072 --site SOUTH --at \"2026-04-02 10:00\"");
            assertThat(done(maren, "rack --state plugged --format csv").out())
                    .contains("NC-0072,N-167,HB-0417,plugged,2026-04-02 12:00,")
                    .contains(",395.00,,,SOUTH");
        }
    }

    private Path sheet(String name, String... rows) throws IOException {
        return Files.writeString(
                folder.resolve(name),
                "core,event,at,quantity,other_site\n" + String.join("\n", rows) + "\n");
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_taken_back_never_happened(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            String before = board(maren);
            done(maren, "core send NC-0072 --to SOUTH");
            String sent = board(maren);
            done(maren, "core arrive NC-0072 --site SOUTH");
            done(maren, "reverse 10 --reason \"it was another core\"");
            assertThat(board(maren)).isEqualTo(sent).isNotEqualTo(before);
            done(maren, "reverse 9 --reason \"it never left\"");
            assertThat(board(maren)).isEqualTo(before);
        }
    }

    private static String board(FakeShell shell) {
        return done(shell, "rack --format csv").out();
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void whoever_acts_on_the_rack_sends_and_takes_in_and_nobody_else(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn =
                    larkmere.shellOf(
                            Larkmere.QUINN, new CoreSendCommand(larkmere::store, larkmere.sites()));
            assertThat(quinn.line("core send NC-0072 --to SOUTH").status())
                    .isEqualTo(Status.REFUSED);
            done(RackShells.otis(larkmere), "core send NC-0072 --to SOUTH");
            done(RackShells.hal(larkmere), "core arrive NC-0072 --site SOUTH");
        }
    }
}
