package counterbench.shell.console;

/** What stands before the line that a person types. */
@FunctionalInterface
public interface PromptText {
    /**
     * The text, asked for before every line. May read the store; if that fails, a plain one is
     * shown.
     */
    String text();
}
