package counterbench.db;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/**
 * Looks a few names up, each by a statement of its own. Where an index begins with the site, H2
 * goes through all of the site for a list of names, and straight to a single one.
 */
public final class OneByOne {
    private OneByOne() {}

    /** All that is found for the names, in their order. */
    public static <T, R> List<R> fetch(
            Collection<T> names, Function<T, ? extends Collection<R>> fetch) {
        return names.stream().<R>flatMap(name -> fetch.apply(name).stream()).toList();
    }
}
