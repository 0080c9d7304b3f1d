package counterbench.month.sheet;

import counterbench.claims.Ageing;
import counterbench.claims.Claim;
import counterbench.claims.Standing;
import counterbench.job.Job;
import counterbench.review.JobFile;
import counterbench.spool.SpooledRows;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The claims that were submitted in the month, and earlier ones that wait for money or whose
 * withdrawal or denial is booked in the month, and what has come of them.
 */
final class ClaimsSheet {
    private final SiteMonth period;
    private final LocalDate today;
    private final SpooledRows rows;

    /**
     * @param asOf as of when claims age
     */
    ClaimsSheet(SiteMonth period, Instant asOf, SpooledRows rows) {
        this.period = period;
        this.today = period.site().dayOf(asOf);
        this.rows = rows;
    }

    /** Adds the claims of a job. */
    void add(JobFile file) {
        file.claims().stream()
                .filter(claim -> isShown(claim, Standing.of(claim, file.credits())))
                .forEach(claim -> add(claim, file));
    }

    /** Those of the month, and earlier ones that still wait for money or fell in it. */
    private boolean isShown(Claim claim, Standing standing) {
        boolean isEarlier = claim.submittedOn().isBefore(period.month().atDay(1));
        return period.books(claim.submittedOn(), claim.address())
                || (isEarlier && (standing.isOpen() || fell(claim)));
    }

    private boolean fell(Claim claim) {
        return claim.fallsOn().filter(day -> period.books(day, claim.fallen())).isPresent();
    }

    private void add(Claim claim, JobFile file) {
        Standing standing = Standing.of(claim, file.credits());
        RowOf row =
                new RowOf()
                        .with("claim", claim.claim())
                        .with("job", claim.job())
                        .with("submitted_on", claim.submittedOn())
                        .with("labour_hours", claim.labourHours())
                        .with("labour_amount", claim.labourAmount())
                        .with("parts_amount", claim.partsAmount())
                        .with("core_charge", claim.coreCharge())
                        .with("total", standing.total().orElse(null))
                        .with("credited", standing.credited().orElse(null))
                        .with("open", standing.waiting().orElse(null))
                        .with("overpaid", standing.overpaid().orElse(null))
                        .with("currency", currency(claim))
                        .with("state", standing.state().words())
                        .with("withdrawn_on", claim.withdrawnOn())
                        .with("denied_on", claim.deniedOn())
                        .with("replaces", claim.replaces())
                        .with("reason", claim.reason());
        if (standing.isOpen()) {
            long days = ChronoUnit.DAYS.between(claim.submittedOn(), today);
            row.with("days", days).with("age", Ageing.of(days).words());
        } else {
            row.with("age", "nothing open");
        }
        addJob(row, file.job());
        rows.add(List.of(claim.submittedOn(), claim.claim()), row.values());
    }

    private String currency(Claim claim) {
        @Nullable String said = claim.currency();
        return said == null ? period.site().currency().getCurrencyCode() : said;
    }

    private static void addJob(RowOf row, @Nullable Job job) {
        if (job != null) {
            row.with("campaign", job.campaign())
                    .with("vin", job.vin())
                    .with("work_order", job.workOrder())
                    .with("completed_at", job.isCompleted() ? job.completedAt() : null);
        }
    }
}
