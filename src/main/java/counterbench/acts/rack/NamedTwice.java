package counterbench.acts.rack;

import counterbench.shared.Problem;
import java.util.List;
import java.util.stream.IntStream;

/** Cores that a line names more than once. */
final class NamedTwice {
    private NamedTwice() {}

    static List<Problem> problems(List<String> tags) {
        return IntStream.range(0, tags.size())
                .filter(i -> tags.indexOf(tags.get(i)) < i)
                .mapToObj(tags::get)
                .distinct()
                .map(
                        tag ->
                                new Problem(
                                        "core \"" + tag + "\"",
                                        "it is named twice",
                                        "name it once"))
                .toList();
    }
}
