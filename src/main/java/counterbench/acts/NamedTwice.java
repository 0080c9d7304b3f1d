package counterbench.acts;

import counterbench.shared.Problem;
import java.util.List;
import java.util.stream.IntStream;

/** Kits or cores that a line names more than once. */
public final class NamedTwice {
    private NamedTwice() {}

    /**
     * What is wrong with a list of names.
     *
     * @param thing what bears them, such as {@code core}
     */
    public static List<Problem> problems(String thing, List<String> names) {
        return IntStream.range(0, names.size())
                .filter(i -> names.indexOf(names.get(i)) < i)
                .mapToObj(names::get)
                .distinct()
                .map(
                        name ->
                                new Problem(
                                        thing + " \"" + name + "\"",
                                        "it is named twice",
                                        "name it once"))
                .toList();
    }
}
