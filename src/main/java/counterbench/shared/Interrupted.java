package counterbench.shared;

/** Thrown where a person asked running work to stop. What was not recorded yet stays undone. */
public final class Interrupted extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Interrupted() {
        super("interrupted");
    }
}
