package counterbench.month.sheet;

import counterbench.campaign.Pack;
import counterbench.campaign.Vehicle;
import counterbench.claims.Claim;
import counterbench.cores.CoreHistory;
import counterbench.job.Job;
import counterbench.judgement.Severity;
import counterbench.review.JobCase;
import counterbench.review.JobFile;
import counterbench.spool.SpooledRows;
import counterbench.stock.Issue;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The jobs that were completed in the month, and how they stand for a claim. */
final class JobsSheet {
    private final SiteMonth period;
    private final OpenFindings open;
    private final SpooledRows rows;

    JobsSheet(SiteMonth period, OpenFindings open, SpooledRows rows) {
        this.period = period;
        this.open = open;
        this.rows = rows;
    }

    /** Adds a job of the month. */
    void add(Job job, Instant completedAt, JobCase jobCase, List<CoreHistory> cores) {
        JobFile file = jobCase.file();
        @Nullable Vehicle vehicle = file.vehicle();
        @Nullable Pack pack = jobCase.pack().orElse(null);
        OpenFindings.Sums sums = open.of(job.job(), cores, file.claims());
        rows.add(
                List.of(completedAt, job.job()),
                new RowOf()
                        .with("job", job.job())
                        .with("campaign", job.campaign())
                        .with("revision", pack == null ? null : pack.revision())
                        .with("vin", job.vin())
                        .with("model", vehicle == null ? null : vehicle.model())
                        .with("work_order", job.workOrder())
                        .with("technician", job.technician())
                        .with("opened_at", job.openedAt())
                        .with("completed_at", completedAt)
                        .with("kits", joined(file.issues().stream().map(Issue::kit)))
                        .with("cores", joined(cores.stream().map(CoreHistory::core)))
                        .with("claim", standing(file.claims()).orElse(null))
                        .with("submit_by", submitBy(pack, completedAt))
                        .with("stops", sums.of(Severity.STOP))
                        .with("fixes", sums.of(Severity.FIX))
                        .values());
    }

    private static @Nullable String joined(Stream<@Nullable String> names) {
        String all = names.filter(Objects::nonNull).distinct().collect(Collectors.joining(", "));
        return all.isEmpty() ? null : all;
    }

    /** The last claim that was neither withdrawn nor denied. */
    private static Optional<String> standing(List<Claim> claims) {
        return claims.stream()
                .filter(claim -> claim.fallsOn().isEmpty())
                .max(Claim.ORDER)
                .map(Claim::claim);
    }

    private @Nullable LocalDate submitBy(@Nullable Pack pack, Instant completedAt) {
        return Optional.ofNullable(pack)
                .map(Pack::claim)
                .flatMap(terms -> terms.lastDay(period.site().dayOf(completedAt)))
                .orElse(null);
    }
}
