package counterbench.intake;

import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks rows of {@code claims}. */
final class ClaimCheck {
    private final ClaimNames claims;

    ClaimCheck(ClaimNames claims) {
        this.claims = claims;
    }

    void check(FactRow row, Complaints complaints) {
        RowCheck.checkOrder(row, "submitted_on", "withdrawn_on", complaints);
        RowCheck.checkOrder(row, "submitted_on", "denied_on", complaints);
        String replaced = row.text("replaces");
        if (replaced == null) {
            return;
        }
        if (replaced.equals(row.text("claim"))) {
            complaints.of("replaces", "a claim cannot replace itself", "name the earlier claim");
        } else if (!claims.isClaim(replaced)) {
            complaints.of("replaces", "there is no such claim", meant(replaced, row.text("job")));
        }
    }

    /** A claim takes the place of one for the same job. */
    private String meant(String replaced, @Nullable String job) {
        Set<String> ofJob = job == null ? Set.of() : claims.ofJob(job);
        return NearMatch.of(replaced, ofJob)
                .map(near -> "did you mean " + near + "?")
                .orElse(
                        ofJob.isEmpty()
                                ? "name the earlier claim, or leave the cell empty"
                                : "the job has " + String.join(", ", ofJob));
    }
}
