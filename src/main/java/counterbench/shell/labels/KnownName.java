package counterbench.shell.labels;

import counterbench.labels.Labelled;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Supplier;

/** Refuses a name that nothing bears, with the one that was probably meant. */
final class KnownName {
    private KnownName() {}

    /**
     * What was found under a name.
     *
     * @param word what kind of thing it is
     * @param names all names that there are, looked up only where nothing was found
     * @throws Refused if nothing was found
     */
    static Labelled of(
            Optional<? extends Labelled> found,
            String word,
            String name,
            String because,
            String todo,
            Supplier<? extends Collection<String>> names) {
        if (found.isPresent()) {
            return found.get();
        }
        throw new Refused(
                word + " \"" + name + "\"",
                because,
                NearMatch.of(name, names.get())
                        .map(near -> "did you mean " + near + "?")
                        .orElse(todo));
    }
}
