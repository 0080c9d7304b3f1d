package counterbench.job;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One vehicle's visit under one campaign.
 *
 * @param no its number in the store's keys
 * @param job the name that people use
 * @param vin as it was written
 * @param completedAt when it ended, if it has; set for every completed job
 * @param outcome how it ended; null while it is open
 * @param redoOf the job that this one does again, if it says so
 */
public record Job(
        int no,
        String job,
        String campaign,
        String vin,
        Instant openedAt,
        @Nullable String workOrder,
        @Nullable String technician,
        @Nullable Instant completedAt,
        @Nullable Outcome outcome,
        @Nullable String redoOf,
        @Nullable Long mileage) {
    public Job {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(vin, "vin");
        Objects.requireNonNull(openedAt, "openedAt");
        if (outcome == Outcome.COMPLETED && completedAt == null) {
            throw new IllegalArgumentException(
                    "completed job " + job + " has no time of completion");
        }
    }

    /** Whether the work was done to the end. */
    public boolean isCompleted() {
        return outcome == Outcome.COMPLETED;
    }

    /** Whether work on it may still go on. */
    public boolean isOpen() {
        return outcome == null;
    }

    /** The same, ended. */
    public Job ended(Outcome how, Instant at) {
        return new Job(
                no, job, campaign, vin, openedAt, workOrder, technician, at, how, redoOf, mileage);
    }
}
