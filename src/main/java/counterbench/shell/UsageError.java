package counterbench.shell;

import java.util.List;

/** Thrown where the command line itself is wrong; bears everything that is wrong with it. */
public final class UsageError extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> messages;

    public UsageError(List<String> messages) {
        super(String.join("\n", messages));
        this.messages = List.copyOf(messages);
    }

    public UsageError(String message) {
        this(List.of(message));
    }

    /** One line for everything that is wrong. */
    public List<String> messages() {
        return messages;
    }
}
