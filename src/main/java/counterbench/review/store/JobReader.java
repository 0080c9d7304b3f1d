package counterbench.review.store;

import counterbench.facts.FactRow;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.review.Horizon;
import java.time.Instant;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes a job of what its rows say together, as it stood at the horizon. */
final class JobReader {
    private final Horizon horizon;

    JobReader(Horizon horizon) {
        this.horizon = horizon;
    }

    /** The job; empty if it had not been opened. */
    Optional<Job> job(int no, FactRow row) {
        Instant openedAt = Objects.requireNonNull(row.time("opened_at"));
        if (!horizon.reaches(openedAt)) {
            return Optional.empty();
        }
        @Nullable Instant completedAt = row.time("completed_at");
        boolean ended = completedAt == null || horizon.reaches(completedAt);
        return Optional.of(
                new Job(
                        no,
                        Objects.requireNonNull(row.text("job")),
                        Objects.requireNonNull(row.text("campaign")),
                        Objects.requireNonNull(row.text("vin")),
                        openedAt,
                        row.text("work_order"),
                        row.text("technician"),
                        ended ? completedAt : null,
                        ended ? outcome(row.text("outcome")) : null,
                        row.text("redo_of"),
                        row.whole("mileage")));
    }

    private static @Nullable Outcome outcome(@Nullable String said) {
        return said == null
                ? null
                : Arrays.stream(Outcome.values())
                        .filter(o -> o.word().equals(said))
                        .findFirst()
                        .orElseThrow();
    }
}
