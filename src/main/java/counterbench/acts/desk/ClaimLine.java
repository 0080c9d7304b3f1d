package counterbench.acts.desk;

import counterbench.claims.Claim;
import counterbench.claims.Standing;
import counterbench.job.Job;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A claim with its job and how it stands.
 *
 * @param job its job, if there is one of that name
 */
public record ClaimLine(Standing standing, @Nullable Job job) {
    /** By day of submission, then by number. */
    public static final Comparator<ClaimLine> ORDER =
            Comparator.comparing((ClaimLine line) -> line.claim().submittedOn())
                    .thenComparing(line -> line.claim().claim());

    /** The claim. */
    public Claim claim() {
        return standing.claim();
    }

    /** How many days ago it was submitted. */
    public long age(LocalDate today) {
        return ChronoUnit.DAYS.between(claim().submittedOn(), today);
    }

    /** The last day of the site's patience for its credit. */
    public LocalDate patience(Site site) {
        return claim().submittedOn().plusDays(site.patience().creditDays());
    }

    /** Whether money is still to come for it, or too much came. */
    public boolean isOpen() {
        return standing.isOpen();
    }

    /** What came for it beyond what it asks, above zero; empty where not too much came. */
    public Optional<BigDecimal> overpaid() {
        return standing.overpaid();
    }
}
