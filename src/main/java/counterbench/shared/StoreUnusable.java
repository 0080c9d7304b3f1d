package counterbench.shared;

/** Thrown where the store cannot be opened, read or written; says what a person can do about it. */
public class StoreUnusable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public StoreUnusable(String message, Throwable cause) {
        super(message, cause);
    }

    public StoreUnusable(String message) {
        super(message);
    }
}
