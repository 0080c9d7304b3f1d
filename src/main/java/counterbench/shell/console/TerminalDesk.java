package counterbench.shell.console;

import counterbench.shared.Interrupted;
import counterbench.shell.Circumstances;
import counterbench.shell.Desk;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;

/** The desk of a person in the shell: results and messages share the screen. */
final class TerminalDesk extends Desk {
    private static final int USUAL_WIDTH = 80;
    private static final char UNSEEN = 0;

    private final Terminal terminal;
    private @Nullable LineReader answers;

    TerminalDesk(Circumstances circumstances, Terminal terminal) {
        super(circumstances, terminal.writer(), terminal.writer());
        this.terminal = terminal;
    }

    @Override
    public boolean isScreen() {
        return true;
    }

    @Override
    public int width() {
        return terminal.getWidth() > 0 ? terminal.getWidth() : USUAL_WIDTH;
    }

    @Override
    public @Nullable String ask(String prompt) {
        return answer(prompt, null);
    }

    @Override
    public @Nullable String askSecretly(String prompt) {
        return answer(prompt, UNSEEN);
    }

    private @Nullable String answer(String prompt, @Nullable Character mask) {
        LineReader reader = answers == null ? LineReaders.forAnswers(terminal) : answers;
        answers = reader;
        try {
            return reader.readLine(prompt, mask);
        } catch (EndOfFileException e) {
            return null;
        } catch (UserInterruptException e) {
            throw new Interrupted();
        }
    }
}
