package counterbench.cores;

import counterbench.campaign.CoreTerms;
import counterbench.job.Job;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the rules read about one core.
 *
 * @param job the job that it was removed in, if that is known
 * @param terms its line of the pack in force on the day of the job's completion, or of the review
 *     while the job is open; null where the campaign wants none, or where it cannot be told
 * @param sameSerial the tags of other removed cores of the site that bear its serial
 * @param asOf the clock of the review; no fact is later
 */
public record CoreFacts(
        Site site,
        CoreHistory history,
        @Nullable Job job,
        @Nullable CoreTerms terms,
        List<String> sameSerial,
        Instant asOf) {
    public CoreFacts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(history, "history");
        sameSerial = sameSerial.stream().distinct().sorted().toList();
        Objects.requireNonNull(asOf, "asOf");
    }

    /** The core tag. */
    public String core() {
        return history.core();
    }

    /** The day by whose end the core must be shipped, once its job is completed. */
    public Optional<LocalDate> shipBy() {
        if (terms == null || terms.returnWithinDays() == null) {
            return Optional.empty();
        }
        int days = terms.returnWithinDays();
        return completedAt().map(site::dayOf).map(day -> day.plusDays(days));
    }

    /** A finding on this core, in the month in which its job ended, however it did. */
    public Finding finding(Rule rule, String message, String evidence) {
        return new Finding(
                rule,
                site.site(),
                job == null ? null : job.campaign(),
                Subject.of(SubjectKind.CORE, core()),
                month(),
                "core " + core() + ": " + message,
                evidence);
    }

    private @Nullable YearMonth month() {
        return Optional.ofNullable(job).map(Job::completedAt).map(site::monthOf).orElse(null);
    }

    private Optional<Instant> completedAt() {
        return Optional.ofNullable(job).filter(Job::isCompleted).map(Job::completedAt);
    }
}
