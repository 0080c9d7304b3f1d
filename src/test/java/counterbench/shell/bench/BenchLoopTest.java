package counterbench.shell.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The loop that takes scans. */
class BenchLoopTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_batch_of_scans_does_a_job_and_does_it_once(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            BenchOfNorth.replay(larkmere, "bench-loop");
        }
    }

    @Test
    void a_job_that_is_closed_without_being_done_says_how_that_is_taken_back() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell otis = BenchOfNorth.otis(larkmere);
            assertThat(otis.line("job complete N-155 --outcome abandoned").err())
                    .contains(
                            "if it goes on after all, or was the wrong job, take that back: reverse"
                                    + " 9 --reason TEXT\n");
            assertThat(otis.line("reverse 9 --reason \"goes on\"").status()).isEqualTo(Status.DONE);
            assertThat(otis.line("job complete N-155 --outcome not-needed").err())
                    .contains("take that back: reverse 11 --reason TEXT\n");
        }
    }

    @Test
    void on_a_screen_a_quantity_and_its_part_stay_in_one_line() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            for (int width = 90; width < 130; width++) {
                String table = BenchOfNorth.otis(larkmere).onScreen(width).line("job list").out();
                assertThat(table).doesNotContainPattern("(?m)(^|[ ,])([0-9.]+|[0-9.]+ mL)$");
                assertThat(table).doesNotContain("\u00a0").contains("4 HB-3013");
            }
            assertThat(BenchOfNorth.otis(larkmere).line("job list --format csv").out())
                    .contains("1 HB-3011, 1 HB-3012, 4 HB-3013, 4.2 mL HB-3015");
        }
    }

    /** TW-1 falls due on 15 September. */
    @Test
    void on_a_screen_an_overdue_wrench_is_told_once_before_a_reading_and_stays_in_the_line() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell otis = BenchOfNorth.otis(larkmere).onScreen(120);
            Instant dayAfter = Instant.parse("2026-09-16T14:00:00Z");
            String screen = otis.at(dayAfter).line("bench N-169", "TW-1", "47", "quit").out();
            assertThat(screen)
                    .contains(
                            "read with TW-1, in N·m",
                            "instrument TW-1 was due for calibration on 2026-09-15; read with"
                                    + " another one (with INSTRUMENT), or")
                    .contains("with TW-1 (overdue)");
            assertThat(screen.indexOf("was due for calibration"))
                    .isLessThan(screen.indexOf("step mount marked"));
            assertThat(screen.split("was due for calibration", -1)).hasSize(2);
            FakeShell.Output again = otis.line("bench N-169", "quit");
            assertThat(again.err()).contains("instrument TW-1 was due for calibration");
            assertThat(again.out()).contains("mount 2/3: ").contains("with TW-1 (overdue)");
        }
    }

    /** Unicode's forms of one name (UAX #15). */
    @Test
    void a_name_typed_letter_and_mark_apart_is_the_same_name(@TempDir Path folder)
            throws IOException {
        Path kits = folder.resolve("kits.csv");
        Files.writeString(kits, "kit,kit_part,received_at\nK\u00e4-1,HB-3010-K,2026-04-01 08:00\n");
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            larkmere.shellOf("Maren", Role.LEAD).run(List.of("import", kits.toString()));
            FakeShell otis = BenchOfNorth.otis(larkmere);
            otis.line("job open N-950 --campaign HB-0417 --vin 0WBCB12D7NA002799");
            assertThat(otis.line("bench N-950", "Ka\u0308-1", "quit").out())
                    .contains("kit K\u00e4-1 issued");
        }
    }
}
