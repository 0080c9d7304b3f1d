package counterbench.job.rules;

import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;

/**
 * A completed job of a campaign on one vehicle, at any site. Visits stand in order of completion,
 * then of the job's number; of like numbers at two sites, of the site's name.
 */
public record Visit(String site, String job, Instant completedAt) implements Comparable<Visit> {
    private static final Comparator<Visit> ORDER =
            Comparator.comparing(Visit::completedAt)
                    .thenComparing(Visit::job)
                    .thenComparing(Visit::site);

    public Visit {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(completedAt, "completedAt");
    }

    @Override
    public int compareTo(Visit other) {
        return ORDER.compare(this, other);
    }
}
