package counterbench.review.store;

import counterbench.judgement.Finding;
import java.util.List;
import java.util.function.Consumer;

/** Passes on what is found. */
final class OutcomeToTell implements Outcome {
    private final Consumer<Finding> taker;

    OutcomeToTell(Consumer<Finding> taker) {
        this.taker = taker;
    }

    @Override
    public void add(int jobNo, List<Finding> found) {
        found.forEach(taker);
    }

    @Override
    public void add(String section, List<Finding> found) {
        found.forEach(taker);
    }
}
