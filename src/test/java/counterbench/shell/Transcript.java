package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A session with the shell kept as text: what was typed and what was seen. Lines that begin with
 * {@code >} are commands, lines that begin with {@code >>} behind them are answers to what the
 * command asks, {@code (exit 2)} says that it did not end with 0, lines that begin with {@code #}
 * are comments. All else is what the command wrote, results and messages alike, and must be exactly
 * so.
 */
public final class Transcript {
    private final List<String> lines;

    private Transcript(List<String> lines) {
        this.lines = lines;
    }

    /** The transcript of that name among the test's resources. */
    public static Transcript of(String name) throws IOException {
        String path = "/counterbench/transcripts/" + name + ".txt";
        try (InputStream text = Transcript.class.getResourceAsStream(path)) {
            byte[] bytes = Objects.requireNonNull(text, path).readAllBytes();
            return new Transcript(new String(bytes, StandardCharsets.UTF_8).lines().toList());
        }
    }

    /** Types every command again and compares what is seen. */
    public void replay(Runner runner, Circumstances circumstances) {
        List<String> seen = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith(">") && !line.startsWith(">>")) {
                seen.add(line);
                List<String> answers = answersAfter(i);
                answers.forEach(answer -> seen.add(">> " + answer));
                seen.addAll(typed(line.substring(1).strip(), answers, runner, circumstances));
            } else if (line.startsWith("#") || isBetween(i)) {
                seen.add(line);
            }
        }
        assertThat(String.join("\n", seen)).isEqualTo(String.join("\n", lines));
    }

    private List<String> answersAfter(int command) {
        return lines.subList(command + 1, lines.size()).stream()
                .takeWhile(line -> line.startsWith(">>"))
                .map(line -> line.substring(2).strip())
                .toList();
    }

    /** An empty line before a command or a comment is there for the eye. */
    private boolean isBetween(int i) {
        boolean before =
                i + 1 < lines.size()
                        && (lines.get(i + 1).startsWith(">") || lines.get(i + 1).startsWith("#"));
        return lines.get(i).isEmpty() && before;
    }

    private static List<String> typed(
            String line, List<String> answers, Runner runner, Circumstances circumstances) {
        StringWriter screen = new StringWriter();
        PrintWriter writer = new PrintWriter(screen);
        BufferedReader in = new BufferedReader(new StringReader(String.join("\n", answers)));
        Status status =
                runner.run(
                        line,
                        new PlainDesk(circumstances, in, writer, writer, PlainDesk.View.NONE));
        List<String> seen = new ArrayList<>(screen.toString().lines().toList());
        if (status != Status.DONE) {
            seen.add("(exit " + status.code() + ")");
        }
        return seen;
    }
}
