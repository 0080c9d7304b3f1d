package counterbench.job;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A job as it stands at one time.
 *
 * @param site the site whose job it is
 * @param job the job as it is recorded
 * @param asOf the time of the judgement; an end that comes later has not happened yet
 */
public record JudgedJob(Site site, Job job, Instant asOf) {
    public JudgedJob {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(asOf, "asOf");
    }

    /** When it was completed, if it has been. */
    public Optional<Instant> completion() {
        return job.isCompleted() && !endsLater()
                ? Optional.ofNullable(job.completedAt())
                : Optional.empty();
    }

    /** Whether the work was done to the end. */
    public boolean isCompleted() {
        return completion().isPresent();
    }

    /** The last instant that counts for what is on the vehicle: the completion, or now. */
    public Instant until() {
        return completion().orElse(asOf);
    }

    /** Whether it was given up. */
    public boolean isAbandoned() {
        return job.outcome() == Outcome.ABANDONED && !endsLater();
    }

    /** Whether work on it may still go on. */
    public boolean isOpen() {
        return job.isOpen() || endsLater();
    }

    /** A finding about the job as a whole. */
    public Finding finding(Rule rule, String message, String evidence) {
        return about(Subject.of(SubjectKind.JOB, job.job()), rule, message, evidence);
    }

    /** A finding about a part on the job, or about the job as a whole where no part is said. */
    public Finding findingOnPart(
            Rule rule, @Nullable String part, String message, String evidence) {
        return about(Subject.ofPart(SubjectKind.JOB, job.job(), part), rule, message, evidence);
    }

    /** A finding about a step of the job. */
    public Finding findingOnStep(Rule rule, String step, String message, String evidence) {
        return about(Subject.ofStep(job.job(), step), rule, message, evidence);
    }

    private Finding about(Subject subject, Rule rule, String message, String evidence) {
        String sentence = "job " + job.job() + ": " + message;
        return new Finding(rule, site.site(), job.campaign(), subject, month(), sentence, evidence);
    }

    private @Nullable YearMonth month() {
        Instant end = job.completedAt();
        return end == null || endsLater() ? null : site.monthOf(end);
    }

    private boolean endsLater() {
        Instant end = job.completedAt();
        return end != null && end.isAfter(asOf);
    }
}
