package counterbench.shell.console;

import counterbench.shared.Visible;
import counterbench.shell.Circumstances;
import counterbench.shell.Commands;
import counterbench.shell.Runner;
import counterbench.shell.Status;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;

/**
 * The shell: asks for a line, runs it, asks again. Ctrl-C at the prompt drops the line, in a
 * command it stops the command; Ctrl-D leaves.
 */
public final class Conversation implements Callable<Status> {
    private static final String PLAIN_PROMPT = "counterbench> ";

    private final Commands commands;
    private final Runner runner;
    private final Circumstances circumstances;
    private final PromptText prompt;
    private final Supplier<Terminal> terminals;

    /**
     * @param terminals opens the terminal to talk at
     */
    public Conversation(
            Commands commands,
            Circumstances circumstances,
            PromptText prompt,
            Supplier<Terminal> terminals) {
        this.commands = commands;
        this.runner = new Runner(commands);
        this.circumstances = circumstances;
        this.prompt = prompt;
        this.terminals = terminals;
    }

    @Override
    public Status call() throws Exception {
        try (Terminal terminal = terminals.get()) {
            // What is typed ahead may be a PIN; a line that is read is shown by the reader.
            terminal.echo(false);
            talk(LineReaders.forCommands(terminal, commands, circumstances), terminal);
        }
        return Status.DONE;
    }

    private void talk(LineReader reader, Terminal terminal) {
        Thread here = Thread.currentThread();
        // While a line is read the reader has a handler of its own.
        terminal.handle(Terminal.Signal.INT, signal -> stop(here));
        TerminalDesk desk = new TerminalDesk(circumstances, terminal);
        desk.out().println("counterbench: help lists the commands, Tab completes, Ctrl-D leaves.");
        while (!circumstances.session().isLeaving()) {
            try {
                runner.run(reader.readLine(promptNow()), desk);
            } catch (UserInterruptException e) {
                // The person gave up this line and gets another.
            } catch (EndOfFileException e) {
                return;
            }
            // A Ctrl-C that came too late must not break the next line.
            Thread.interrupted();
        }
    }

    /**
     * The first Ctrl-C asks the command to stop where it may; a second one interrupts whatever it
     * is waiting for.
     */
    private void stop(Thread running) {
        if (circumstances.stop().isAsked()) {
            running.interrupt();
        }
        circumstances.stop().ask();
    }

    private String promptNow() {
        try {
            return Visible.text(prompt.text());
        } catch (RuntimeException e) {
            return PLAIN_PROMPT;
        }
    }
}
