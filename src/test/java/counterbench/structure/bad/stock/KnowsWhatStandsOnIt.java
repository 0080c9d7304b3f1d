package counterbench.structure.bad.stock;

import counterbench.structure.bad.review.Above;

/** Bad on purpose: a room that knows one above. */
public final class KnowsWhatStandsOnIt {
    public Above above() {
        return new Above();
    }
}
