package counterbench.month.sheet;

import counterbench.campaign.CoreTerms;
import counterbench.claims.Credit;
import counterbench.cores.Answer;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreFacts;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.DueCores;
import counterbench.cores.Minutes;
import counterbench.cores.Placement;
import counterbench.job.Job;
import counterbench.review.JobCase;
import counterbench.sheets.report.SpooledRows;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The cores of the month's jobs, and those that were still on the way to their credit, all as they
 * stood at the end of the month.
 */
final class CoresSheet {
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
        List<CoreEvent> events =
                core.events().stream().filter(e -> period.isBeforeEnd(e.at())).toList();
        if (events.isEmpty()) {
            return;
        }
        CoreHistory then =
                new CoreHistory(
                        core.core(),
                        events,
                        core.acknowledgements().stream()
                                .filter(a -> period.isBeforeEnd(a.at()))
                                .toList());
        List<Credit> paid =
                credits.stream().filter(c -> !c.paidOn().isAfter(period.lastDay())).toList();
        add(then, jobCase, paid, CoreStatus.of(then, creditedAt(paid)).state());
    }

    private @Nullable Instant creditedAt(List<Credit> paid) {
        boolean isCredited =
                Credits.sum(paid, c -> true).filter(sum -> sum.signum() > 0).isPresent();
        return isCredited ? Credits.lastDay(paid).map(period.site()::startOf).orElse(null) : null;
    }

    private void add(CoreHistory core, JobCase jobCase, List<Credit> paid, CoreState state) {
        @Nullable Job job = jobCase.job().orElse(null);
        @Nullable CoreTerms terms =
                jobCase.pack()
                        .map(pack -> new DueCores(pack, jobCase.attributes()))
                        .flatMap(due -> due.termsOf(core.part()))
                        .orElse(null);
        BigDecimal charge = terms == null ? BigDecimal.ZERO : terms.charge();
        if (isOfMonth(job) || isUnderWay(state, charge)) {
            CoreFacts facts =
                    new CoreFacts(period.site(), core, job, terms, List.of(), jobCase.asOf());
            write(facts, jobCase.file().name(), charge, paid, state);
        }
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
        rows.add(
                List.of(core.removedAt().orElse(core.events().get(0).at()), core.core()),
                new RowOf()
                        .with("core", core.core())
                        .with("job", jobName)
                        .with("campaign", job == null ? null : job.campaign())
                        .with("part", core.part())
                        .with("serial", core.serial())
                        .with("state", state.word())
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
                        .with("at_risk", settled ? null : charge)
                        .with("credited", Credits.sum(paid, c -> true).orElse(null))
                        .values());
    }
}
