package counterbench.acts.desk;

import counterbench.acts.CoreCase;
import counterbench.acts.Directory;
import counterbench.acts.JobState;
import counterbench.acts.rack.Objection;
import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Pack;
import counterbench.claims.Claim;
import counterbench.claims.draft.Draft;
import counterbench.claims.draft.DraftClaim;
import counterbench.cores.CoreHistory;
import counterbench.cores.DueCores;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.judgement.SubjectKind;
import counterbench.review.FindingId;
import counterbench.review.JudgeComponent;
import counterbench.review.Settlements;
import counterbench.shared.Refused;
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

    /**
     * Of a job that is done, under terms that pay for it.
     *
     * @param asked what was asked, for the refusal
     * @throws Refused if it is not done, or the terms pay nothing for it
     */
    public static ClaimCase demand(JobState job, String asked) {
        return of(job).orElseThrow(
                        () ->
                                job.job().isOpen()
                                        ? new Refused(
                                                asked,
                                                "the job is not done",
                                                "claim it when it is; what it lacks: job show "
                                                        + job.name())
                                        : new Refused(
                                                asked,
                                                "the terms in force pay nothing for it",
                                                "look at them: campaign show "
                                                        + job.job().campaign()));
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

    /** What stands against submitting it on a day; the lead may override it. */
    public List<Against> against(LocalDate day, Settlements settled) {
        List<Against> against = new ArrayList<>();
        standing().stream().map(ClaimCase::claimed).forEach(against::add);
        Instant done = job.job().completedAt();
        if (done != null && !done.isBefore(site().endOf(day))) {
            against.add(
                    new Against(
                            "it was done on "
                                    + site().dayOf(done)
                                    + ", after the day of submission",
                            "say that day or a later one with --on"));
        }
        if (job.job().isCompleted()) {
            against.addAll(new CoresNeeded(job, due, terms.needs(), day).against());
        }
        openStops(settled).stream().map(this::stopped).forEach(against::add);
        return against;
    }

    private static Against claimed(Claim standing) {
        return new Against(
                "claim " + standing.claim() + " of " + standing.submittedOn() + " stands for it",
                "to claim it anew, take that one back first: claim withdraw "
                        + standing.claim()
                        + " --reason TEXT");
    }

    private Against stopped(Finding finding) {
        String id = FindingId.of(finding).toString();
        String todo =
                core(finding)
                        .map(core -> new Objection(new CoreCase(job, core), finding).remedy())
                        .orElse(
                                "finding show "
                                        + id
                                        + " tells it; put it right, or the lead settles it: finding"
                                        + " settle "
                                        + id
                                        + " --reason TEXT");
        return new Against("stop " + finding.rule().word() + " is open (" + id + ")", todo);
    }

    /** The core that a finding is about, if it is about one. */
    private Optional<CoreHistory> core(Finding finding) {
        return job.cores().stream()
                .filter(core -> finding.subject().kind() == SubjectKind.CORE)
                .filter(core -> core.core().equals(finding.subject().name()))
                .findFirst();
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
