package counterbench.month.sheet;

import counterbench.claims.Ageing;
import counterbench.job.Job;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * What is owed for a core at the end of the month, or at the time of the workbook where that is
 * earlier: its charge, from its job's completion until it is accepted or credited.
 */
record OwedForCore(BigDecimal charge, long days) {
    /** What is owed for a core that is neither accepted nor credited. */
    static Optional<OwedForCore> of(SiteMonth period, Instant asOf, Job job, BigDecimal charge) {
        return completedBefore(period, job)
                .filter(at -> charge.signum() > 0)
                .map(period.site()::dayOf)
                .map(day -> new OwedForCore(charge, days(day, period, asOf)));
    }

    /** When a job was completed, if it was by the end of the month. */
    static Optional<Instant> completedBefore(SiteMonth period, Job job) {
        return job.isCompleted()
                ? Optional.ofNullable(job.completedAt()).filter(period::isBeforeEnd)
                : Optional.empty();
    }

    private static long days(LocalDate completedOn, SiteMonth period, Instant asOf) {
        LocalDate today = period.isBeforeEnd(asOf) ? period.site().dayOf(asOf) : period.lastDay();
        return ChronoUnit.DAYS.between(completedOn, today);
    }

    /** Fills the columns that tell of it. */
    void fill(RowOf row) {
        row.with("owed", charge).with("days", days).with("age", Ageing.of(days).words());
    }
}
