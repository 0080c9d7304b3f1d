package counterbench.acts;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreStatus;
import counterbench.cores.DrainPeriod;
import counterbench.cores.DueCores;
import counterbench.cores.Whereabouts;
import counterbench.review.Component;
import counterbench.review.Terms;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One core as it stands.
 *
 * @param job the job that it was removed on
 */
public record CoreCase(JobState job, CoreHistory core) {
    /** Every removed core of a component. */
    public static List<CoreCase> allOf(Site site, Instant now, Terms terms, Component component) {
        return JobState.allOf(site, now, terms, component).stream()
                .flatMap(job -> job.cores().stream().map(core -> new CoreCase(job, core)))
                .filter(found -> found.core().removedAt().isPresent())
                .toList();
    }

    /** What the campaign asks of it, as far as that can be told. */
    public Optional<CoreTerms> terms() {
        return job.pack()
                .flatMap(pack -> new DueCores(pack, job.attributes()).termsOf(core.part()));
    }

    /** Where it is by all that is told of it. */
    public Whereabouts where() {
        return Whereabouts.of(core, job.site().site());
    }

    /** How far it has come, and where it is if not in its own yard: {@code packed, at SOUTH}. */
    public String standing() {
        return CoreStatus.of(core, null).state().word() + where().besides(job.site().site());
    }

    /** When the drain that is open at a time will have been as long as the terms ask. */
    public Optional<Instant> drainOver(Instant at) {
        return core.drainOpenAt(at)
                .map(this::countsFrom)
                .flatMap(from -> terms().map(t -> from.plus(Minutes.length(t.drainMinutes()))));
    }

    /** A drain that goes on where another ended is one with it. */
    private Instant countsFrom(Instant begun) {
        return core.drainPeriods().counted().stream()
                .filter(p -> !p.ended().isBefore(begun) && p.begun().isBefore(begun))
                .map(DrainPeriod::begun)
                .findFirst()
                .orElse(begun);
    }
}
