package counterbench.acts.desk;

import counterbench.acts.Directory;
import counterbench.acts.JobState;
import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Pack;
import counterbench.claims.Claim;
import counterbench.claims.draft.Draft;
import counterbench.claims.draft.DraftClaim;
import counterbench.cores.DueCores;
import counterbench.cores.JobCoresFacts;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.judgement.SubjectKind;
import counterbench.review.FindingId;
import counterbench.review.JudgeComponent;
import counterbench.review.Settlements;
import counterbench.shared.Site;
import counterbench.stock.StoreCosts;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A job that is done, as the warranty desk sees it: what to claim for it, and what stands against.
 */
public final class ClaimCase {
    private final JobState job;
    private final ClaimTerms terms;
    private final DueCores due;

    private ClaimCase(JobState job, ClaimTerms terms, DueCores due) {
        this.job = job;
        this.terms = terms;
        this.due = due;
    }

    /** Of a job that is done, under terms that pay for it; empty for others. */
    public static Optional<ClaimCase> of(JobState job) {
        Optional<Pack> pack = job.pack();
        Optional<ClaimTerms> terms = pack.map(Pack::claim);
        return terms.filter(t -> DraftClaim.isDone(job.job(), t))
                .map(t -> new ClaimCase(job, t, new DueCores(pack.get(), job.attributes())));
    }

    /** The job. */
    public JobState job() {
        return job;
    }

    /** Whether no claim for it stands. */
    public boolean isUnclaimed() {
        return standing().isEmpty();
    }

    /** The month in which it was done. */
    public YearMonth month() {
        return site().monthOf(Objects.requireNonNull(job.job().completedAt()));
    }

    /** Claims for it that stand. */
    public List<Claim> standing() {
        return job.file().claims().stream().filter(c -> c.fallsOn().isEmpty()).toList();
    }

    /**
     * What to claim.
     *
     * @param directory knows the rates
     */
    public Draft draft(StoreCosts store, Directory directory) {
        BigDecimal charge = job.job().isCompleted() ? due.charge() : BigDecimal.ZERO;
        return new DraftClaim(
                        site(),
                        job.job(),
                        terms,
                        job.attributes(),
                        directory.rates(),
                        JobCosts.of(job, store),
                        charge,
                        job.file().claims())
                .draft();
    }

    private Site site() {
        return job.site();
    }

    /** What stands against submitting it on a day, in words; the lead may override it. */
    public List<String> against(LocalDate day, Settlements settled) {
        List<String> against = new ArrayList<>();
        standing().stream()
                .map(c -> "claim " + c.claim() + " of " + c.submittedOn() + " stands for it")
                .forEach(against::add);
        Instant done = job.job().completedAt();
        if (done != null && !done.isBefore(site().endOf(day))) {
            against.add("it was done on " + site().dayOf(done) + ", after the day of submission");
        }
        if (job.job().isCompleted() && !cores().meet(terms.needs(), site().endOf(day))) {
            against.add("its core does not meet what the claim needs, " + terms.needs().word());
        }
        openStops(settled).stream()
                .map(f -> "stop " + f.rule().word() + " is open (" + FindingId.of(f) + ")")
                .forEach(against::add);
        return against;
    }

    private JobCoresFacts cores() {
        return new JobCoresFacts(site(), job.job(), due, job.cores());
    }

    /** Open findings of severity stop about the job and its cores. */
    private List<Finding> openStops(Settlements settled) {
        return new JudgeComponent(site(), job.terms(), job.now())
                .judge(job.component()).findings().getOrDefault(job.name(), List.of()).stream()
                        .filter(f -> f.rule().severity() == Severity.STOP)
                        .filter(f -> f.subject().kind() != SubjectKind.CLAIM)
                        .filter(f -> settled.of(f).isEmpty())
                        .toList();
    }
}
