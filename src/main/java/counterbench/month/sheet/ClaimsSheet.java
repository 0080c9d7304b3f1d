package counterbench.month.sheet;

import counterbench.claims.Claim;
import counterbench.claims.Standing;
import counterbench.job.Job;
import counterbench.review.JobFile;
import counterbench.sheets.report.SpooledRows;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The claims that were submitted in the month, and what has come of them since. */
final class ClaimsSheet {
    private final SiteMonth period;
    private final SpooledRows rows;

    ClaimsSheet(SiteMonth period, SpooledRows rows) {
        this.period = period;
        this.rows = rows;
    }

    /** Adds the claims of a job. */
    void add(JobFile file) {
        file.claims().stream()
                .filter(claim -> period.books(claim.submittedOn(), claim.address()))
                .forEach(claim -> add(claim, file));
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
                        .with("open", standing.open().orElse(null))
                        .with("currency", currency(claim))
                        .with("state", standing.state().words())
                        .with("withdrawn_on", claim.withdrawnOn())
                        .with("denied_on", claim.deniedOn())
                        .with("replaces", claim.replaces())
                        .with("reason", claim.reason());
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
