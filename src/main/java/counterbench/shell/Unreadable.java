package counterbench.shell;

/**
 * Thrown where a text is not a value of the kind wanted. The message goes on from the quoted text:
 * {@code is not a day; write it as 2026-03-05}.
 */
public final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Unreadable(String because) {
        super(because);
    }
}
