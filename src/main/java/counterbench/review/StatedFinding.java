package counterbench.review;

import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A finding with its name and whether it is settled. */
public record StatedFinding(FindingId id, Finding finding, FindingState state) {
    /** By site, subject and rule, then part and step; total, so that listings are always alike. */
    public static final Comparator<StatedFinding> BY_SUBJECT =
            Comparator.comparing((StatedFinding stated) -> stated.finding().site())
                    .thenComparing(stated -> stated.finding().subject().kind())
                    .thenComparing(stated -> stated.finding().subject().name())
                    .thenComparing(stated -> stated.finding().rule())
                    .thenComparing(stated -> text(stated.finding().subject().part()))
                    .thenComparing(stated -> text(stated.finding().subject().step()));

    public StatedFinding {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(state, "state");
    }

    /** Whether it is open and of severity stop or fix. */
    public boolean mustBeSettled() {
        return state == FindingState.OPEN && finding.rule().severity() != Severity.NOTE;
    }

    private static String text(@Nullable String text) {
        return Objects.toString(text, "");
    }
}
