package counterbench.month.sheet;

import counterbench.campaign.CoreTerms;
import counterbench.claims.Credit;
import counterbench.cores.Acknowledgement;
import counterbench.cores.Answer;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreFacts;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.DueCores;
import counterbench.cores.Placement;
import counterbench.cores.Whereabouts;
import counterbench.job.Job;
import counterbench.review.JobCase;
import counterbench.shared.Minutes;
import counterbench.spool.SpooledRows;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The cores of the month's jobs, those that were still on the way to their credit, and those that
 * completed jobs should have removed and did not, all as they stood at the end of the month.
 */
final class CoresSheet {
    private static final String NEVER_REMOVED = "never removed";

    private final SiteMonth period;
    private final SpooledRows rows;

    CoresSheet(SiteMonth period, SpooledRows rows) {
        this.period = period;
        this.rows = rows;
    }

    /**
     * Adds a core of a job, unless it was removed later or was done with before.
     *
     * @param credits the core credits for it
     */
    void add(CoreHistory core, JobCase jobCase, Collection<Credit> credits) {
        List<Credit> paid =
                credits.stream().filter(c -> !c.paidOn().isAfter(period.lastDay())).toList();
        asThen(core)
                .ifPresent(
                        then ->
                                add(
                                        then,
                                        jobCase,
                                        paid,
                                        CoreStatus.of(then, creditedAt(paid)).state()));
    }

    /** Adds the cores that a job should have removed and had not, if it was completed by then. */
    void addMissing(JobCase jobCase, Collection<CoreHistory> removed) {
        jobCase.job()
                .filter(job -> OwedForCore.completedBefore(period, job).isPresent())
                .ifPresent(
                        job -> dueCores(jobCase).ifPresent(due -> add(due, job, jobCase, removed)));
    }

    private void add(DueCores due, Job job, JobCase jobCase, Collection<CoreHistory> removed) {
        List<CoreHistory> then = removed.stream().flatMap(core -> asThen(core).stream()).toList();
        for (CoreTerms missing : due.missing(then)) {
            RowOf row =
                    new RowOf()
                            .with("job", job.job())
                            .with("campaign", job.campaign())
                            .with("part", missing.part())
                            .with("state", NEVER_REMOVED)
                            .with("charge", missing.charge());
            OwedForCore.of(period, jobCase.asOf(), job, missing.charge())
                    .ifPresent(owed -> owed.fill(row));
            rows.add(List.of(Objects.requireNonNull(job.completedAt()), job.job()), row.values());
        }
    }

    /** A core with what had happened to it by the end of the month; none where nothing had. */
    private Optional<CoreHistory> asThen(CoreHistory core) {
        List<CoreEvent> events =
                core.events().stream().filter(e -> period.isBeforeEnd(e.at())).toList();
        List<Acknowledgement> answers =
                core.acknowledgements().stream().filter(a -> period.isBeforeEnd(a.at())).toList();
        return events.isEmpty()
                ? Optional.empty()
                : Optional.of(new CoreHistory(core.core(), events, answers));
    }

    private static Optional<DueCores> dueCores(JobCase jobCase) {
        return jobCase.pack().map(pack -> new DueCores(pack, jobCase.attributes()));
    }

    private @Nullable Instant creditedAt(List<Credit> paid) {
        boolean isCredited =
                Credits.sum(paid, c -> true).filter(sum -> sum.signum() > 0).isPresent();
        return isCredited ? Credits.lastDay(paid).map(period.site()::startOf).orElse(null) : null;
    }

    private void add(CoreHistory core, JobCase jobCase, List<Credit> paid, CoreState state) {
        @Nullable Job job = jobCase.job().orElse(null);
        @Nullable CoreTerms terms =
                dueCores(jobCase).flatMap(due -> due.termsOf(core.part())).orElse(null);
        BigDecimal charge = terms == null ? BigDecimal.ZERO : terms.charge();
        if (isOfMonth(job) || isUnderWay(state, charge)) {
            CoreFacts facts =
                    new CoreFacts(period.site(), core, job, terms, List.of(), jobCase.asOf());
            write(facts, jobCase.file().name(), charge, paid, state);
        }
    }

    /** As it was written down when it was removed, else what the terms say. */
    private static @Nullable String part(CoreFacts facts) {
        String part = facts.history().part();
        CoreTerms terms = facts.terms();
        return part == null && terms != null ? terms.part() : part;
    }

    /** Where it lies, or is to arrive. */
    private @Nullable String yard(CoreHistory core) {
        Whereabouts where = Whereabouts.of(core, period.site().site());
        return where.isGone() ? null : where.site();
    }

    private boolean isOfMonth(@Nullable Job job) {
        return job != null
                && job.isCompleted()
                && job.completedAt() != null
                && period.contains(job.completedAt());
    }

    private static boolean isUnderWay(CoreState state, BigDecimal charge) {
        boolean nothingOwed = state == CoreState.ACCEPTED && charge.signum() == 0;
        return state != CoreState.CREDITED && !nothingOwed;
    }

    /** What is owed for it is saved if it leaves in time, as on the rack's board. */
    private static boolean mustStillLeave(CoreFacts facts, CoreState state) {
        return state.compareTo(CoreState.SHIPPED) < 0 && facts.shipBy().isPresent();
    }

    private void write(
            CoreFacts facts,
            String jobName,
            BigDecimal charge,
            List<Credit> paid,
            CoreState state) {
        CoreHistory core = facts.history();
        @Nullable Job job = facts.job();
        Optional<Answer> answer = core.verdict().or(() -> core.answers().stream().findFirst());
        boolean settled = state == CoreState.ACCEPTED || state == CoreState.CREDITED;
        RowOf row =
                new RowOf()
                        .with("core", core.core())
                        .with("job", jobName)
                        .with("campaign", job == null ? null : job.campaign())
                        .with("part", part(facts))
                        .with("serial", core.serial())
                        .with("state", state.word())
                        .with("yard", yard(core))
                        .with("removed_at", core.removedAt().orElse(null))
                        .with(
                                "drain_minutes",
                                core.drainPeriods().longest().map(Minutes::number).orElse(null))
                        .with("plugs", core.plugs())
                        .with("packaging", core.lastPacked().map(CoreEvent::packaging).orElse(null))
                        .with("shipment", core.placement().map(Placement::shipment).orElse(null))
                        .with("ship_by", facts.shipBy().orElse(null))
                        .with("shipped_at", core.firstShipped().orElse(null))
                        .with("acknowledged_at", answer.map(Answer::at).orElse(null))
                        .with("acknowledgement", answer.map(a -> a.kind().word()).orElse(null))
                        .with("charge", charge)
                        .with("credited", Credits.sum(paid, c -> true).orElse(null));
        if (job != null && !settled) {
            Optional<OwedForCore> owed = OwedForCore.of(period, facts.asOf(), job, charge);
            owed.ifPresent(o -> o.fill(row));
            owed.filter(o -> mustStillLeave(facts, state))
                    .ifPresent(o -> row.with("at_risk", o.charge()));
        }
        rows.add(
                List.of(core.removedAt().orElse(core.events().get(0).at()), core.core()),
                row.values());
    }
}
