package counterbench.claims;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop asks for a job. Amounts are in the site's currency.
 *
 * @param replaces the claim that this one takes the place of, if it says so
 */
public record Claim(
        String claim,
        String job,
        LocalDate submittedOn,
        @Nullable BigDecimal labourHours,
        @Nullable BigDecimal labourAmount,
        @Nullable BigDecimal partsAmount,
        @Nullable BigDecimal coreCharge,
        @Nullable LocalDate withdrawnOn,
        @Nullable LocalDate deniedOn,
        @Nullable String reason,
        @Nullable String replaces) {
    public Claim {
        Objects.requireNonNull(claim, "claim");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(submittedOn, "submittedOn");
    }
}
