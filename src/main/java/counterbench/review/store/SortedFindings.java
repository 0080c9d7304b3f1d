package counterbench.review.store;

import counterbench.judgement.Finding;
import counterbench.review.FindingId;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.spool.SpooledRows;
import java.io.Closeable;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Findings that come in any order and are handed over by their subjects. Of more than a few
 * thousand, temporary files hold the others.
 */
public final class SortedFindings implements Closeable {
    private final SpooledRows rows = new SpooledRows();

    /** Takes one. */
    public void add(StatedFinding stated) {
        Map<String, @Nullable Object> cells = FindingCells.of(stated.finding());
        cells.put("state", stated.state().name());
        rows.add(List.of(stated.place()), cells);
    }

    /** Hands all over, in the order of {@link StatedFinding#BY_SUBJECT}. */
    public void each(Consumer<StatedFinding> taker) {
        rows.each(cells -> taker.accept(stated(cells)));
    }

    private static StatedFinding stated(Map<String, ? extends @Nullable Object> cells) {
        Finding finding = FindingCells.finding(cells);
        FindingState state = FindingState.valueOf(String.valueOf(cells.get("state")));
        return new StatedFinding(FindingId.of(finding), finding, state);
    }

    @Override
    public void close() {
        rows.close();
    }
}
