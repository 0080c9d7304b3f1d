package counterbench.shell;

import java.util.List;
import java.util.function.Function;

/** Knows the values that completion may offer, such as the kits now in the store. */
@FunctionalInterface
public interface Proposals extends Function<Completing, List<String>> {
    /** Offers nothing. */
    Proposals NONE = completing -> List.of();
}
