package counterbench.judgement;

import java.time.YearMonth;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One judgement: a rule holds for a subject.
 *
 * <p>Site, rule and subject are its identity. The evidence is what the judgement rests on, written
 * the same way each time and free of anything that the clock alone changes, so that a settled
 * finding stays settled on the same facts and opens again when they change.
 *
 * @param site the site's short name
 * @param campaign the campaign, where the subject belongs to one
 * @param month the month in which it counts, if it has one yet
 * @param message the sentence that a person reads, with the numbers in it
 * @param evidence the facts in stable words, such as {@code required 4, new 3, refitted 1}
 */
public record Finding(
        Rule rule,
        String site,
        @Nullable String campaign,
        Subject subject,
        @Nullable YearMonth month,
        String message,
        String evidence) {
    public Finding {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(evidence, "evidence");
    }
}
