package counterbench.shell;

import java.util.List;

/** How the text of an option or argument becomes a value. */
@FunctionalInterface
public interface Reading<T> {
    /**
     * The value that the text says.
     *
     * @throws Unreadable if it says none
     */
    T read(String text);

    /** The only texts that there are, for completion; empty where there are many. */
    default List<String> words() {
        return List.of();
    }
}
