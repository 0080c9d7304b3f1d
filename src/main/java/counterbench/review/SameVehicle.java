package counterbench.review;

import java.time.Instant;
import java.util.Objects;

/** A completed job, at any site, on a vehicle that more than one job names. */
public record SameVehicle(
        String site, String job, String campaign, String vin, Instant completedAt) {
    public SameVehicle {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(vin, "vin");
        Objects.requireNonNull(completedAt, "completedAt");
    }
}
