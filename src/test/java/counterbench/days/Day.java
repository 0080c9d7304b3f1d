package counterbench.days;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A day as it is written down: the screen's lines from top to bottom. What was typed stands after
 * {@code »}, what was typed unseen after {@code »»}, and {@code »^C} is Ctrl-C; a line of {@code @}
 * and a time sets the clock before the next line is typed.
 *
 * @param turns what is typed, one after the other
 * @param rest the screen's lines after the last one typed
 */
record Day(List<Turn> turns, List<String> rest) {
    private static final Path FOLDER = Path.of("src/test/resources/counterbench/days");
    private static final String TYPED = "»";
    private static final String UNSEEN = "»»";
    private static final String CLOCK = "@ ";
    private static final String CTRL_C = "^C";

    /**
     * Something typed.
     *
     * @param clock the time that it is from then on, as written; null if that of before
     * @param shown the lines since the line typed before, the last of them the prompt
     */
    record Turn(@Nullable String clock, List<String> shown, String typed, boolean unseen) {
        /** The same after other lines. */
        Turn after(List<String> lines) {
            return new Turn(clock, lines, typed, unseen);
        }

        /** The keys that are pressed. */
        String keys() {
            return typed.equals(CTRL_C) ? "\u0003" : typed + "\r";
        }

        /** The prompt's line once it is typed. */
        String echoed(String prompt) {
            boolean isSeen = !unseen && !typed.equals(CTRL_C);
            return isSeen ? (prompt + " " + typed).stripTrailing() : prompt;
        }

        String time() {
            return OffsetDateTime.parse(clock == null ? "" : clock).toInstant().toString();
        }
    }

    static Path file(String name) {
        return FOLDER.resolve(name + ".txt");
    }

    static Day read(String name) throws IOException {
        List<Turn> turns = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        String clock = null;
        for (String line : Files.readAllLines(file(name))) {
            int typed = line.indexOf(TYPED);
            if (line.startsWith(CLOCK)) {
                clock = line.substring(CLOCK.length());
            } else if (typed < 0) {
                lines.add(line);
            } else {
                boolean unseen = line.startsWith(UNSEEN, typed);
                String after = line.substring(typed + (unseen ? UNSEEN : TYPED).length());
                lines.add(line.substring(0, typed).stripTrailing());
                turns.add(new Turn(clock, List.copyOf(lines), after, unseen));
                lines.clear();
                clock = null;
            }
        }
        return new Day(turns, lines);
    }

    /** Writes it down as it is read. */
    void write(String name) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Turn turn : turns) {
            List<String> shown = turn.shown();
            int last = shown.size() - 1;
            lines.addAll(shown.subList(0, last));
            if (turn.clock() != null) {
                lines.add(CLOCK + turn.clock());
            }
            lines.add(shown.get(last) + " " + (turn.unseen() ? UNSEEN : TYPED) + turn.typed());
        }
        lines.addAll(rest);
        Files.write(file(name), lines);
    }
}
