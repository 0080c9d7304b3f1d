package counterbench.acts.desk;

import counterbench.claims.draft.Draft;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * A draft of a claim and what stands in its way.
 *
 * @param against what stands against submitting it today, besides what the draft lacks
 */
public record ClaimDraft(Draft draft, List<Against> against) {
    /** By day of completion, then by job. */
    public static final Comparator<ClaimDraft> ORDER =
            Comparator.comparing((ClaimDraft d) -> d.draft().completedOn())
                    .thenComparing(d -> d.draft().job());

    public ClaimDraft {
        against = List.copyOf(against);
    }

    /** Whether it can be submitted as it is. */
    public boolean isReady() {
        return against.isEmpty() && draft.isWhole();
    }

    /** Everything in its way. */
    public List<String> held() {
        return Stream.concat(draft.lacks().stream(), against.stream().map(Against::why)).toList();
    }

    /** How many days are left to submit it, that day not counted; below zero it is late. */
    public OptionalLong daysLeft(LocalDate today) {
        return Optional.ofNullable(draft.submitBy())
                .map(by -> OptionalLong.of(ChronoUnit.DAYS.between(today, by)))
                .orElse(OptionalLong.empty());
    }
}
