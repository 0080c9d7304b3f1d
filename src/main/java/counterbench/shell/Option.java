package counterbench.shell;

/**
 * An option: {@code --part QM-4473}, {@code --part=QM-4473}, or without a value {@code --dry-run}.
 *
 * @param name the long name without its hyphens
 * @param valueName what the synopsis calls the value; empty for an option without one
 */
public record Option<T>(
        String name,
        String valueName,
        Reading<T> reading,
        String purpose,
        boolean required,
        boolean repeatable,
        Proposals proposals)
        implements Parameter<T> {

    /** One that may be said once. */
    public static <T> Option<T> of(
            String name, String valueName, Reading<T> reading, String purpose) {
        return new Option<>(name, valueName, reading, purpose, false, false, Proposals.NONE);
    }

    /** One without a value. */
    public static Option<Boolean> flag(String name, String purpose) {
        return of(name, "", text -> true, purpose);
    }

    /** The same, and it must be said. */
    public Option<T> asRequired() {
        return new Option<>(name, valueName, reading, purpose, true, repeatable, proposals);
    }

    /** The same, and it may be said more than once. */
    public Option<T> asRepeatable() {
        return new Option<>(name, valueName, reading, purpose, required, true, proposals);
    }

    /** The same, with live values to offer. */
    public Option<T> completedBy(Proposals live) {
        return new Option<>(name, valueName, reading, purpose, required, repeatable, live);
    }

    /** Whether it has no value. */
    public boolean isFlag() {
        return valueName.isEmpty();
    }

    @Override
    public String label() {
        return "--" + name;
    }

    @Override
    public String form() {
        return isFlag() ? label() : label() + " " + valueName;
    }
}
