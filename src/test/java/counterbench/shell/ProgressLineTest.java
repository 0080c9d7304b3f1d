package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.shared.Interrupted;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private final StringWriter screen = new StringWriter();
    private final AtomicLong nanos = new AtomicLong(5);
    private final Stop stop = new Stop();

    private ProgressLine line(boolean shown, int width) {
        return new ProgressLine(new PrintWriter(screen), shown, width, stop, nanos::get);
    }

    private void seconds(double later) {
        nanos.addAndGet((long) (later * 1e9));
    }

    @Test
    void it_says_how_far_how_fast_and_how_long_yet() {
        ProgressLine line = line(true, 80);
        line.begin("reading uses.csv", 10_000);
        seconds(2);
        line.step(1_000);
        assertThat(screen)
                .hasToString("\rreading uses.csv: 1,000 of 10,000, 500 a second, 0:18 left");
        line.clear();
        assertThat(screen.toString()).endsWith("\r");
    }

    @Test
    void without_a_total_it_says_the_rate_only() {
        ProgressLine line = line(true, 80);
        line.begin("reading", 0);
        seconds(1);
        line.step(7);
        assertThat(screen).hasToString("\rreading: 7, 7 a second");
    }

    @Test
    void it_is_cut_to_the_terminal_and_written_a_few_times_a_second() {
        ProgressLine line = line(true, 20);
        line.begin("reading uses.csv", 10_000);
        seconds(1);
        line.step(1);
        line.step(1);
        assertThat(screen).hasToString("\rreading uses.csv: 1");
    }

    @Test
    void in_a_pipe_nothing_is_written() {
        ProgressLine line = line(false, 80);
        line.begin("reading", 10);
        seconds(9);
        line.step(5);
        line.clear();
        assertThat(screen.toString()).isEmpty();
    }

    @Test
    void it_stops_the_work_when_somebody_asked() {
        ProgressLine line = line(false, 80);
        line.begin("reading", 10);
        stop.ask();
        assertThatThrownBy(() -> line.step(1)).isInstanceOf(Interrupted.class);
    }
}
