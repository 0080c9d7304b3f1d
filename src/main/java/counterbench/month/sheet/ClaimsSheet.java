package counterbench.month.sheet;

import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.job.Job;
import counterbench.review.JobFile;
import counterbench.sheets.report.SpooledRows;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
                .filter(claim -> period.contains(claim.submittedOn()))
                .forEach(claim -> add(claim, file));
    }

    private void add(Claim claim, JobFile file) {
        Optional<BigDecimal> total = claim.total();
        Optional<BigDecimal> credited =
                Credits.sum(
                        file.credits(),
                        c -> claim.claim().equals(c.claim()) && c.kind() != Credit.Kind.CORE);
        boolean stands = claim.fallsOn().isEmpty();
        RowOf row =
                new RowOf()
                        .with("claim", claim.claim())
                        .with("job", claim.job())
                        .with("submitted_on", claim.submittedOn())
                        .with("labour_hours", claim.labourHours())
                        .with("labour_amount", claim.labourAmount())
                        .with("parts_amount", claim.partsAmount())
                        .with("core_charge", claim.coreCharge())
                        .with("total", total.orElse(null))
                        .with("credited", credited.orElse(null))
                        .with("open", stands ? open(total, credited).orElse(null) : null)
                        .with("currency", currency(claim))
                        .with("state", state(claim, total, credited))
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

    private static Optional<BigDecimal> open(
            Optional<BigDecimal> total, Optional<BigDecimal> credited) {
        return total.map(asked -> asked.subtract(credited.orElse(BigDecimal.ZERO)));
    }

    private static void addJob(RowOf row, @Nullable Job job) {
        if (job != null) {
            row.with("campaign", job.campaign())
                    .with("vin", job.vin())
                    .with("work_order", job.workOrder())
                    .with("completed_at", job.isCompleted() ? job.completedAt() : null);
        }
    }

    /** Facts that lie ahead are not in the claim, so a day that it bears has come. */
    private static String state(
            Claim claim, Optional<BigDecimal> total, Optional<BigDecimal> credited) {
        @Nullable LocalDate withdrawn = claim.withdrawnOn();
        @Nullable LocalDate denied = claim.deniedOn();
        if (withdrawn != null || denied != null) {
            return denied == null ? "withdrawn" : "denied";
        }
        if (credited.isEmpty()) {
            return "submitted";
        }
        boolean inFull = total.filter(t -> t.compareTo(credited.get()) == 0).isPresent();
        return inFull ? "paid" : "paid differently";
    }
}
