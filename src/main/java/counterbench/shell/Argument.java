package counterbench.shell;

/**
 * A value known by its place on the line.
 *
 * @param name what the synopsis calls it, such as {@code KIT}
 */
public record Argument<T>(
        String name,
        Reading<T> reading,
        String purpose,
        boolean required,
        boolean repeatable,
        Proposals proposals)
        implements Parameter<T> {

    /** One that must be said. */
    public static <T> Argument<T> of(String name, Reading<T> reading, String purpose) {
        return new Argument<>(name, reading, purpose, true, false, Proposals.NONE);
    }

    /** The same, and it may be left out. Stands behind those that must be said. */
    public Argument<T> asOptional() {
        return new Argument<>(name, reading, purpose, false, repeatable, proposals);
    }

    /** The same, and takes all words that are left. Stands last. */
    public Argument<T> asRepeatable() {
        return new Argument<>(name, reading, purpose, required, true, proposals);
    }

    /** The same, with live values to offer. */
    public Argument<T> completedBy(Proposals live) {
        return new Argument<>(name, reading, purpose, required, repeatable, live);
    }

    @Override
    public String label() {
        return name;
    }

    @Override
    public String form() {
        return name;
    }
}
