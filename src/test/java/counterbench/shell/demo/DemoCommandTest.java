package counterbench.shell.demo;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.people.Pin;
import counterbench.people.store.CheckPin;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.rack.ShipmentShowCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.InstantSource;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
    @TempDir Path folder;

    private Path home;
    private Path demo;

    @BeforeEach
    void names() {
        home = folder.resolve("home");
        demo = folder.resolve("home-demo");
    }

    private FakeShell.Output run(String... more) {
        FakeShell shell = new FakeShell(new DemoCommand());
        return shell.with("COUNTERBENCH_HOME", home.toString())
                .run(Stream.concat(Stream.of("demo"), Stream.of(more)).toList());
    }

    private static List<String> files(Path under) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> under.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void the_garage_is_filled_beside_the_home_folder_and_filled_anew_again() throws IOException {
        FakeShell.Output first = run();
        assertThat(first.err()).isEmpty();
        assertThat(first.status()).isEqualTo(Status.DONE);
        assertThat(first.out())
                .startsWith("the invented garage of Larkmere lies in " + demo + "\n")
                .contains("83 findings, open: 35 stop, 38 fix, 10 note")
                .containsPattern("HB-3013 +45 +42 +3 +0  N-107 N-117\n")
                .contains("Cores of NORTH, 2026-04-10 12:00\n")
                .containsPattern("NC-0075 +draining +11:50 +wait 8 min, until 12:08 +0 of 4 ")
                .contains("\n  ship SH-N14 --override ")
                .containsPattern("reused-hardware +3  job N-107: ")
                .contains(
                        "COUNTERBENCH_HOME=" + demo + " java -jar target/counterbench.jar review");
        assertThat(first.out().lines().filter(line -> line.endsWith(".xlsx")).map(String::strip))
                .hasSize(4)
                .allSatisfy(book -> assertThat(Path.of(book)).isRegularFile());
        assertThat(home).as("the real home").doesNotExist();
        assertThat(files(demo.resolve("paper"))).isEqualTo(files(Larkmere.DATA));
        Files.writeString(demo.resolve("paper/of-somebody.txt"), "x");
        FakeShell.Output second = run();
        assertThat(second.out()).isEqualTo(first.out());
        assertThat(second.err())
                .isEqualTo("the demo in " + demo + " is made anew; what was done in it is gone\n");
        assertThat(demo.resolve("paper/of-somebody.txt")).doesNotExist();
        try (Store store = TestStores.open(StoreAddress.of(demo, null))) {
            var signIn = new CheckPin(() -> store, InstantSource.fixed(FakeShell.NOW));
            List.of("Maren", "Hal", "Otis", "Quinn")
                    .forEach(
                            name ->
                                    assertThat(signIn.signIn(name, new Pin("2604")).name())
                                            .isEqualTo(name));
            assertThat(letGo(store))
                    .contains(
                            "let go by Maren",
                            "the other cap cracked; it stands upright in a closed tote",
                            "core SC-0020: plugs-short, 1 of 2 plugs are logged");
        }
    }

    /** The shipment that left with a stop on it. */
    private static String letGo(Store store) {
        FakeShell shell =
                new FakeShell(new ShipmentShowCommand(() -> store, new SiteChoice(() -> store)));
        shell.session().signIn(Larkmere.HAL);
        return shell.line("shipment show SH-S04 --site SOUTH").screen();
    }

    @Test
    void a_folder_that_the_demo_did_not_make_is_left_alone() throws IOException {
        Files.createDirectories(demo);
        Files.writeString(demo.resolve("march.csv"), "mine");
        FakeShell.Output output = run();
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.messages())
                .containsExactly(
                        "demo in \""
                                + demo
                                + "\": it is there already, and the demo did not make it; name a"
                                + " new folder with --home");
        assertThat(demo.resolve("march.csv")).hasContent("mine");
        Path file = Files.writeString(folder.resolve("file"), "mine");
        assertThat(run("--home", file.toString()).status()).isEqualTo(Status.REFUSED);
        assertThat(file).hasContent("mine");
    }

    @Test
    void a_demo_that_holds_the_home_folder_or_is_open_elsewhere_is_left_alone() throws Exception {
        Path marked = Files.createDirectories(folder.resolve("marked"));
        Files.writeString(marked.resolve(DemoHome.MARKER), "");
        home = Files.createDirectories(marked.resolve("home"));
        assertThat(run("--home", marked.toString()).err())
                .contains("the home folder \"" + home + "\" lies in it; name another folder");
        home = folder.resolve("home");
        try (Store open = TestStores.open(StoreAddress.of(marked, null));
                Connection used = open.connect()) {
            assertThat(used.isClosed()).isFalse();
            assertThat(run("--home", marked.toString()).err()).contains("a shell has it open");
            assertThat(marked.resolve("home")).exists();
        }
    }

    @Test
    void what_a_link_leads_to_is_not_emptied() throws IOException {
        Path marked = Files.createDirectories(folder.resolve("marked"));
        Files.writeString(marked.resolve(DemoHome.MARKER), "");
        Path mine = Files.createDirectories(folder.resolve("mine"));
        Files.writeString(mine.resolve("march.csv"), "mine");
        Files.createSymbolicLink(marked.resolve("link"), mine);
        assertThat(run("--home", marked.toString()).status()).isEqualTo(Status.DONE);
        assertThat(mine.resolve("march.csv")).hasContent("mine");
        assertThat(marked.resolve("link")).doesNotExist();
    }

    @Test
    void lines_to_copy_are_quoted_and_reach_no_server() {
        assertThat(new TryNext(Path.of("/a b/it's"), true).line("review"))
                .isEqualTo(
                        "COUNTERBENCH_STORE= COUNTERBENCH_HOME='/a b/it'\\''s' java -jar"
                                + " target/counterbench.jar review");
    }
}
