package counterbench.shell;

import java.util.List;

/**
 * Something that a command line may say: an option or an argument.
 *
 * @param <T> what its value is
 */
public sealed interface Parameter<T> permits Option, Argument {
    /** As help and refusals name it: {@code --part} or {@code KIT}. */
    String label();

    /** As the synopsis shows it: {@code --part PART} or {@code KIT}. */
    String form();

    /** How its text becomes a value. */
    Reading<T> reading();

    /** Whether it must be said. */
    boolean required();

    /** Whether it may be said more than once. */
    boolean repeatable();

    /** What it is for, in a few words. */
    String purpose();

    /** What completion offers. */
    Proposals proposals();

    /** What completion offers for a begun value; never fails, at worst offers nothing. */
    default List<String> proposed(Completing completing) {
        return reading().words().isEmpty() ? proposals().apply(completing) : reading().words();
    }
}
