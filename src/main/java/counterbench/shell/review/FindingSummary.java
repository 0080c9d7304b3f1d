package counterbench.shell.review;

import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Findings counted in one line. */
public final class FindingSummary {
    private final Map<Severity, Integer> open = new EnumMap<>(Severity.class);
    private int all;
    private int settled;
    private boolean mustBeSettled;

    /** Counts one. */
    public void add(StatedFinding stated) {
        all++;
        if (stated.state() == FindingState.SETTLED) {
            settled++;
        } else {
            open.merge(stated.finding().rule().severity(), 1, Integer::sum);
        }
        mustBeSettled |= stated.mustBeSettled();
    }

    /** Whether one of them is open and of severity stop or fix. */
    boolean hasWhatMustBeSettled() {
        return mustBeSettled;
    }

    /** How many there are, the open ones by severity. */
    public String line() {
        if (all == 0) {
            return "no findings";
        }
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            counts.add(open.getOrDefault(severity, 0) + " " + severity.word());
        }
        return (all == 1 ? "1 finding" : all + " findings")
                + ", open: "
                + String.join(", ", counts)
                + (settled == 0 ? "" : "; settled: " + settled);
    }
}
