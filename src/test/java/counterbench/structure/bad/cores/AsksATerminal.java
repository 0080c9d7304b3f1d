package counterbench.structure.bad.cores;

import org.jline.terminal.Terminal;

/** Bad on purpose: an act that needs a terminal. */
public final class AsksATerminal {
    public int width(Terminal terminal) {
        return terminal.getWidth();
    }
}
