package counterbench.shell.console;

import counterbench.home.Surroundings;
import counterbench.shared.StoreUnusable;
import counterbench.shell.Circumstances;
import counterbench.shell.Commands;
import java.util.List;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Terminal;

/** Makes the readers of lines that a person types. */
final class LineReaders {
    private static final String HISTORY_FILE = "history";
    private static final int LINES_KEPT = 2_000;
    private static final List<String> COMPLETION_STYLES =
            List.of(
                    LineReader.COMPLETION_STYLE_STARTING,
                    LineReader.COMPLETION_STYLE_DESCRIPTION,
                    LineReader.COMPLETION_STYLE_GROUP,
                    LineReader.COMPLETION_STYLE_SELECTION,
                    LineReader.COMPLETION_STYLE_LIST_STARTING,
                    LineReader.COMPLETION_STYLE_LIST_DESCRIPTION,
                    LineReader.COMPLETION_STYLE_LIST_GROUP,
                    LineReader.COMPLETION_STYLE_LIST_SELECTION);

    private LineReaders() {}

    /** For command lines: with history, completion and editing. */
    static LineReader forCommands(
            Terminal terminal, Commands commands, Circumstances circumstances) {
        DefaultParser words = new DefaultParser();
        words.setEofOnUnclosedQuote(false);
        words.setEofOnEscapedNewLine(false);
        LineReader reader =
                LineReaderBuilder.builder()
                        .terminal(terminal)
                        .parser(words)
                        .completer(new Completion(commands, circumstances::site))
                        .history(new DiscreetHistory())
                        .variable(LineReader.HISTORY_FILE_SIZE, LINES_KEPT)
                        .variable(LineReader.HISTORY_SIZE, LINES_KEPT)
                        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                        // Pasted lines run one after the other, as if typed.
                        .option(LineReader.Option.BRACKETED_PASTE, false)
                        .build();
        keepHistory(reader, circumstances);
        if (!isColourWanted(circumstances.surroundings())) {
            COMPLETION_STYLES.forEach(style -> reader.setVariable(style, "bold"));
        }
        return reader;
    }

    /** Without a home folder there is no history; the commands that need the home will say why. */
    private static void keepHistory(LineReader reader, Circumstances circumstances) {
        try {
            reader.setVariable(
                    LineReader.HISTORY_FILE, circumstances.home().get().file(HISTORY_FILE));
            reader.getHistory().attach(reader);
        } catch (StoreUnusable e) {
            reader.setVariable(LineReader.DISABLE_HISTORY, true);
        }
    }

    /** The line library does not know NO_COLOR, so it is told. */
    private static boolean isColourWanted(Surroundings surroundings) {
        String kind = surroundings.variable("TERM").orElse("dumb");
        return surroundings.variable("NO_COLOR").isEmpty() && !kind.startsWith("dumb");
    }

    /**
     * For answers and scanned labels: what arrives is taken as it is, whatever characters it holds,
     * and neither kept nor completed.
     */
    static LineReader forAnswers(Terminal terminal) {
        return LineReaderBuilder.builder()
                .terminal(terminal)
                .parser((line, cursor, context) -> new WholeLine(line, cursor))
                .variable(LineReader.DISABLE_HISTORY, true)
                .variable(LineReader.DISABLE_COMPLETION, true)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.BRACKETED_PASTE, false)
                .build();
    }
}
