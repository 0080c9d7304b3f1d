package counterbench.days;

import counterbench.days.Day.Turn;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.awaitility.Awaitility;

/**
 * Writes a day anew from what is typed in it, once it should look different: {@code mvn -q
 * test-compile exec:exec -Pbench -Dbench.class=counterbench.days.WriteDay -Dbench.jobs=NAME}. Read
 * what changed before you keep it.
 */
final class WriteDay {
    private static final Duration QUIET = Duration.ofMillis(600);
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private WriteDay() {}

    /**
     * Types a day and writes down what the screen shows.
     *
     * @param args its name
     */
    public static void main(String[] args) throws Exception {
        Day day = Day.read(args[0]);
        Path folder = Files.createTempDirectory("counterbench-day");
        Path home = Garage.prepared(folder);
        List<Turn> turns = new ArrayList<>();
        int seen = 0;
        try (TerminalSession terminal =
                new TerminalSession(folder, home, day.turns().get(0).time())) {
            for (Turn turn : day.turns()) {
                List<String> lines = atRest(terminal, seen);
                turns.add(turn.after(lines.subList(seen, lines.size())));
                seen = lines.size();
                if (turn.clock() != null) {
                    terminal.setClock(turn.time());
                }
                terminal.press(turn.keys());
            }
            Awaitility.await().atMost(PATIENCE).until(terminal::isOver);
            List<String> lines = terminal.lines();
            new Day(turns, lines.subList(seen, lines.size())).write(args[0]);
        }
    }

    /** The screen once it has asked something new and stays as it is for a while. */
    private static List<String> atRest(TerminalSession terminal, int seen) {
        Awaitility.await()
                .atMost(PATIENCE)
                .during(QUIET)
                .until(terminal::lines, lines -> waitsForSomebody(lines, seen));
        return List.copyOf(terminal.lines());
    }

    private static boolean waitsForSomebody(List<String> lines, int seen) {
        if (lines.size() <= seen) {
            return false;
        }
        String last = lines.get(lines.size() - 1);
        return last.matches(".*[>:?\\]]");
    }
}
