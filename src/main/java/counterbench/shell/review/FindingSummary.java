package counterbench.shell.review;

import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import java.util.ArrayList;
import java.util.List;

/** Findings counted in one line. */
public final class FindingSummary {
    private FindingSummary() {}

    /** How many there are, the open ones by severity. */
    public static String of(List<StatedFinding> findings) {
        if (findings.isEmpty()) {
            return "no findings";
        }
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long open =
                    findings.stream()
                            .filter(f -> f.finding().rule().severity() == severity)
                            .filter(f -> f.state() == FindingState.OPEN)
                            .count();
            counts.add(open + " " + severity.word());
        }
        long settled = findings.stream().filter(f -> f.state() == FindingState.SETTLED).count();
        return (findings.size() == 1 ? "1 finding" : findings.size() + " findings")
                + ", open: "
                + String.join(", ", counts)
                + (settled == 0 ? "" : "; settled: " + settled);
    }
}
