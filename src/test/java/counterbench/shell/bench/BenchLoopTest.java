package counterbench.shell.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import java.time.Instant;
import org.junit.jupiter.api.Test;
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

    /** TW-1 falls due on 15 September. */
    @Test
    void on_a_screen_an_overdue_wrench_is_told_once_before_a_reading_and_stays_in_the_line() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell otis = BenchOfNorth.otis(larkmere).onScreen(120);
            Instant dayAfter = Instant.parse("2026-09-16T14:00:00Z");
            String screen =
                    otis.at(dayAfter).line("bench N-169", "TW-1", "47", "quit").out();
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
}
