package counterbench.cores;

import counterbench.campaign.ClaimTerms;
import counterbench.job.Job;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the rules read about the cores of one job together.
 *
 * @param due what the campaign wants back for the job's vehicle
 * @param cores the cores that were removed in the job
 */
public record JobCoresFacts(Site site, Job job, DueCores due, List<CoreHistory> cores) {
    public JobCoresFacts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(due, "due");
        cores = List.copyOf(cores);
    }

    /** The cores that may be among those wanted; the others no line known to apply concerns. */
    public List<CoreHistory> counted() {
        return cores.stream().filter(core -> due.mayBeWanted(core.part())).toList();
    }

    /**
     * Whether the job's cores had met a claim's needs before a moment: as many as wanted were
     * removed, and each of them was shipped, or acknowledged.
     *
     * @param moment the end of the day of submission
     */
    public boolean meet(ClaimTerms.Needs needs, Instant moment) {
        List<CoreHistory> counted = counted();
        return needs == ClaimTerms.Needs.NONE
                || (counted.size() >= due.wanted()
                        && counted.stream().allMatch(core -> meets(core, needs, moment)));
    }

    private static boolean meets(CoreHistory core, ClaimTerms.Needs needs, Instant moment) {
        return switch (needs) {
            case NONE -> true;
            case CORE_SHIPPED -> core.firstShipped().filter(moment::isAfter).isPresent();
            case CORE_ACKNOWLEDGED ->
                    core.answers().stream().anyMatch(answer -> answer.at().isBefore(moment));
        };
    }

    /** A finding on the job, in the month of its completion. */
    public Finding finding(Rule rule, String message, String evidence) {
        return new Finding(
                rule,
                site.site(),
                job.campaign(),
                Subject.of(SubjectKind.JOB, job.job()),
                month(),
                "job " + job.job() + ": " + message,
                evidence);
    }

    private @Nullable YearMonth month() {
        Instant at = job.completedAt();
        return job.isCompleted() && at != null ? site.monthOf(at) : null;
    }
}
