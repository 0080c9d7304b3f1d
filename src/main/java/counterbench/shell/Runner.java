package counterbench.shell;

import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ParsedInput;

/**
 * Runs one command line and turns every outcome into a status and its messages. Spring Shell's own
 * runner ends with 0 on most errors and splits words with blanks apart.
 */
public final class Runner {
    private static final String DEBUG = "--debug";

    private final Commands commands;
    private final LineParser parser;

    public Runner(Commands commands) {
        this.commands = commands;
        this.parser = new LineParser(commands);
    }

    /** Runs what a line of text says; an empty line and a comment do nothing. */
    public Status run(String line, Desk desk) {
        List<String> words;
        try {
            words = Tokenizer.split(line);
        } catch (UsageError e) {
            return failed(List.of(), e, false, desk);
        }
        return words.isEmpty() ? Status.DONE : run(words, desk);
    }

    /** Runs what the words say. */
    public Status run(List<String> words, Desk desk) {
        desk.circumstances().stop().clear();
        List<String> said = new ArrayList<>(words);
        boolean debug = takeDebug(said) || desk.circumstances().session().isDebugging();
        try {
            return execute(asCommand(said), desk);
        } catch (Throwable e) {
            return failed(said, e, debug, desk);
        } finally {
            desk.out().flush();
            desk.err().flush();
        }
    }

    /** Takes {@code --debug} off the words, wherever it stands before a {@code --}. */
    public static boolean takeDebug(List<String> words) {
        int end = words.indexOf("--");
        return words.subList(0, end < 0 ? words.size() : end).removeIf(DEBUG::equals);
    }

    /**
     * {@code kit --help} and {@code --help} alone ask the help command; {@code --version} likewise.
     */
    private List<String> asCommand(List<String> words) {
        if (words.isEmpty() || words.get(0).equals("--help") || words.get(0).equals("-h")) {
            return List.of("help");
        }
        if (words.get(0).equals("--version")) {
            return List.of("version");
        }
        boolean group = words.size() == 2 && commands.at(words).isEmpty();
        return group && words.get(1).equals("--help") ? List.of("help", words.get(0)) : words;
    }

    private Status execute(List<String> words, Desk desk) throws Exception {
        ParsedInput input = parser.parse(words);
        Command command = commands.at(words).orElseThrow().command();
        CommandContext context = new CommandContext(input, commands.registry(), desk.out(), desk);
        Status status = Status.of(command.execute(context));
        return desk.out().checkError() ? notWritten(desk) : status;
    }

    private static Status notWritten(Desk desk) {
        if (readerIsGone(desk)) {
            return Status.INTERRUPTED;
        }
        desk.err().println("the results could not be written to the end; is the disk full?");
        return Status.UNUSABLE;
    }

    private static boolean readerIsGone(Desk desk) {
        return desk.out() instanceof ResultWriter results && results.isReaderGone();
    }

    private Status failed(List<String> words, Throwable thrown, boolean debug, Desk desk) {
        desk.out().flush();
        Failure failure = Failure.of(thrown);
        if (failure.status() == Status.INTERRUPTED && readerIsGone(desk)) {
            return Status.INTERRUPTED;
        }
        failure.lines().forEach(line -> desk.print(line, desk.err()));
        if (failure.status() == Status.USAGE) {
            desk.err().println(seeAlso(words));
        }
        if (debug) {
            thrown.printStackTrace(desk.err());
        }
        return failure.status();
    }

    private String seeAlso(List<String> words) {
        return commands.at(words)
                .map(match -> "see help " + match.command().getName())
                .orElse("see help");
    }
}
