package counterbench.review;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A finding with its name and whether it is settled. */
public record StatedFinding(FindingId id, Finding finding, FindingState state) {
    private static final String THEN = "\u0000";

    /** By site, subject and rule, then part and step; total, so that listings are always alike. */
    public static final Comparator<StatedFinding> BY_SUBJECT =
            Comparator.comparing(StatedFinding::place);

    public StatedFinding {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(state, "state");
    }

    /** Whether it is open and of severity stop or fix. */
    public boolean mustBeSettled() {
        return state == FindingState.OPEN && finding.rule().severity() != Severity.NOTE;
    }

    /** Compares with those of others as the findings do; no two findings have the same. */
    public String place() {
        Subject subject = finding.subject();
        return String.join(
                THEN,
                finding.site(),
                place(SubjectKind.values(), subject.kind()),
                subject.name(),
                place(Rule.values(), finding.rule()),
                text(subject.part()),
                text(subject.step()));
    }

    /** As a letter; letters stand in the order in which the words do. */
    private static <E> String place(E[] words, E word) {
        return String.valueOf((char) ('0' + Arrays.asList(words).indexOf(word)));
    }

    private static String text(@Nullable String text) {
        return Objects.toString(text, "");
    }
}
