package counterbench.acts.rack;

import counterbench.acts.JobState;
import counterbench.campaign.CoreTerms;
import counterbench.cores.DueCores;
import counterbench.review.Component;
import counterbench.review.Terms;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is owed for one core that a completed job must send back.
 *
 * @param since the day of the job's completion
 * @param missing whether the core was never removed
 */
public record Owed(String campaign, LocalDate since, BigDecimal charge, boolean missing) {
    public Owed {
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(charge, "charge");
    }

    /** What is owed for a core; nothing where its job goes on, or it is accepted or credited. */
    public static Optional<Owed> of(BoardLine line) {
        return Optional.ofNullable(line.completedOn())
                .filter(day -> line.isOwed() && line.charge().signum() > 0)
                .map(day -> new Owed(line.campaign(), day, line.charge(), false));
    }

    /**
     * What is owed for cores that completed jobs of a component should have removed and did not.
     */
    public static List<Owed> ofMissing(Site site, Instant now, Terms terms, Component component) {
        return JobState.allOf(site, now, terms, component).stream()
                .filter(job -> job.job().isCompleted())
                .flatMap(
                        job ->
                                missing(job).stream()
                                        .filter(core -> core.charge().signum() > 0)
                                        .map(core -> ofMissing(site, job, core)))
                .toList();
    }

    private static List<CoreTerms> missing(JobState job) {
        return job.pack()
                .map(pack -> new DueCores(pack, job.attributes()).missing(job.cores()))
                .orElse(List.of());
    }

    private static Owed ofMissing(Site site, JobState job, CoreTerms core) {
        LocalDate day = site.dayOf(Objects.requireNonNull(job.job().completedAt()));
        return new Owed(job.job().campaign(), day, core.charge(), true);
    }
}
