package counterbench.review.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;

/**
 * Long lists in pieces that a statement can name one by one: H2 looks longer ones through for every
 * row.
 */
final class Chunks {
    private static final int SIZE = 500;

    private Chunks() {}

    /** Gives the pieces. */
    static <T> void each(Collection<T> all, Consumer<List<T>> pieces) {
        List<T> list = new ArrayList<>(all);
        for (int i = 0; i < list.size(); i += SIZE) {
            pieces.accept(list.subList(i, Math.min(list.size(), i + SIZE)));
        }
    }
}
