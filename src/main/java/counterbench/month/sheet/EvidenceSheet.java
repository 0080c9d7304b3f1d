package counterbench.month.sheet;

import counterbench.campaign.CoreTerms;
import counterbench.campaign.Limits;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.campaign.StepText;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.DrainPeriod;
import counterbench.cores.DueCores;
import counterbench.job.Job;
import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import counterbench.review.JobCase;
import counterbench.shared.Minutes;
import counterbench.spool.SpooledRows;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What stands behind each job of the month, in order of time: its marks with values, limits and
 * instruments, and the draining and plugging of its cores.
 */
final class EvidenceSheet {
    private static final String MINUTES = "min";

    private final SiteMonth period;
    private final SpooledRows rows;

    EvidenceSheet(SiteMonth period, SpooledRows rows) {
        this.period = period;
        this.rows = rows;
    }

    /** Adds the evidence of a job of the month. */
    void add(Job job, Instant completedAt, JobCase jobCase, List<CoreHistory> cores) {
        Writing writing = new Writing(job, completedAt, jobCase);
        jobCase.file().marks().forEach(writing::mark);
        cores.forEach(writing::core);
    }

    /** The rows of one job. */
    private final class Writing {
        private final Job job;
        private final Instant completedAt;
        private final JobCase jobCase;
        private final Optional<Pack> pack;

        Writing(Job job, Instant completedAt, JobCase jobCase) {
            this.job = job;
            this.completedAt = completedAt;
            this.jobCase = jobCase;
            this.pack = jobCase.pack();
        }

        private RowOf row(Instant at) {
            return new RowOf()
                    .with("job", job.job())
                    .with("campaign", job.campaign())
                    .with("at", at);
        }

        private void add(Instant at, RowOf row) {
            rows.add(List.of(completedAt, job.job(), at), row.values());
        }

        void mark(Mark mark) {
            RowOf row =
                    row(mark.at())
                            .with("step", mark.step())
                            .with("instrument", mark.instrument())
                            .with("by", mark.by())
                            .with("entry", mark.address());
            pack.flatMap(p -> p.step(mark.step())).ifPresent(step -> step(row, step, mark));
            calibration(mark).ifPresent(c -> calibration(row, c));
            add(mark.at(), row);
        }

        private void step(RowOf row, Step step, Mark mark) {
            boolean wait = step.kind() == StepKind.WAIT;
            Limits limits = MarkLimits.of(step, mark.unit());
            @Nullable BigDecimal value = wait ? mark.minutes() : mark.value();
            row.with("instruction", instruction(step))
                    .with("fastener", step.fasteners() > 1 ? mark.fastener() : null)
                    .with("value", value);
            if (value != null) {
                String unit = mark.unit() == null ? step.unit() : mark.unit();
                row.with("unit", wait ? MINUTES : unit)
                        .with("low", limits.low())
                        .with("high", limits.high());
            }
        }

        /** Limits stand in columns of their own; those of a rise, which have none, are told. */
        private static String instruction(Step step) {
            return step.riseFrom() == null
                    ? step.what()
                    : step.what() + ": " + StepText.asked(step);
        }

        private Optional<Calibration> calibration(Mark mark) {
            @Nullable Instrument instrument =
                    mark.instrument() == null
                            ? null
                            : jobCase.terms().instruments().get(mark.instrument());
            return instrument == null
                    ? Optional.empty()
                    : instrument.calibrationOn(period.site().dayOf(mark.at()));
        }

        private void calibration(RowOf row, Calibration calibration) {
            row.with("due_on", calibration.dueOn()).with("certificate", calibration.certificate());
        }

        void core(CoreHistory core) {
            @Nullable CoreTerms terms =
                    pack.map(p -> new DueCores(p, jobCase.attributes()))
                            .flatMap(due -> due.termsOf(core.part()))
                            .orElse(null);
            core.drainPeriods().counted().forEach(drain -> drain(drain, core, terms));
            core.events().stream()
                    .filter(e -> e.kind() == CoreEvent.Kind.PLUGGED)
                    .forEach(plugs -> plugs(plugs, "Plug the orifices", terms));
            core.events().stream()
                    .filter(e -> e.kind() == CoreEvent.Kind.UNPLUGGED)
                    .forEach(plugs -> plugs(plugs, "Take plugs out again", null));
        }

        private void drain(DrainPeriod drain, CoreHistory core, @Nullable CoreTerms terms) {
            Optional<CoreEvent> begun =
                    core.events().stream()
                            .filter(e -> e.kind() == CoreEvent.Kind.DRAIN_BEGUN)
                            .filter(e -> e.at().equals(drain.begun()))
                            .findFirst();
            RowOf row =
                    row(drain.begun())
                            .with("core", core.core())
                            .with("instruction", "Drain the removed unit")
                            .with("value", Minutes.number(drain.length()))
                            .with("unit", MINUTES)
                            .with("low", terms == null ? null : terms.drainMinutes())
                            .with("by", begun.map(CoreEvent::by).orElse(null))
                            .with("entry", begun.map(CoreEvent::address).orElse(null));
            add(drain.begun(), row);
        }

        private void plugs(CoreEvent plugs, String instruction, @Nullable CoreTerms terms) {
            RowOf row =
                    row(plugs.at())
                            .with("core", plugs.core())
                            .with("instruction", instruction)
                            .with("value", plugs.quantity() == null ? 1 : plugs.quantity())
                            .with("unit", "each")
                            .with("low", terms == null ? null : terms.plugs())
                            .with("by", plugs.by())
                            .with("entry", plugs.address());
            add(plugs.at(), row);
        }
    }
}
