package counterbench.days;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.days.Day.Turn;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionTimeoutException;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each of the three users' days, from morning to evening, as it is typed and seen. */
class DaysTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Duration OFTEN = Duration.ofMillis(20);

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"parts-clerk"})
    void a_day_in_a_real_terminal_is_as_it_is_written_down(String name) throws Exception {
        Day day = Day.read(name);
        Path home = Garage.prepared(folder);
        List<String> expected = new ArrayList<>();
        try (TerminalSession terminal =
                new TerminalSession(folder, home, day.turns().get(0).time())) {
            for (Turn turn : day.turns()) {
                expected.addAll(turn.shown());
                see(terminal, expected);
                if (turn.clock() != null) {
                    terminal.setClock(turn.time());
                }
                terminal.type(turn.typed());
                if (!turn.unseen()) {
                    int last = expected.size() - 1;
                    String line = expected.get(last) + " " + turn.typed();
                    expected.set(last, line.stripTrailing());
                }
            }
            expected.addAll(day.rest());
            see(terminal, expected);
            Awaitility.await().atMost(PATIENCE).until(terminal::isOver);
        }
    }

    private static void see(TerminalSession terminal, List<String> expected) {
        try {
            Awaitility.await()
                    .atMost(PATIENCE)
                    .pollInterval(OFTEN)
                    .until(() -> terminal.lines().equals(expected));
        } catch (ConditionTimeoutException e) {
            assertThat(terminal.lines()).containsExactlyElementsOf(expected);
        }
    }
}
