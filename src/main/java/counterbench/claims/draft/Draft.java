package counterbench.claims.draft;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a job can be claimed for.
 *
 * @param operation the labour operation's number
 * @param labour hours at the site's rate of the day of completion, rounded half-even to the cent
 * @param parts the parts' cost with the campaign's allowance, rounded likewise
 * @param coreCharge what the terms charge for the cores that the job returns, rounded likewise
 * @param submitBy the last day for the claim, if the terms limit it
 * @param replaces the last claim for the job that stands no more, if there was one
 * @param lines what the amounts are made of
 * @param lacks what must be known first; with any, the amounts are not whole
 */
public record Draft(
        String job,
        String campaign,
        String vin,
        @Nullable String workOrder,
        LocalDate completedOn,
        String operation,
        BigDecimal hours,
        BigDecimal labour,
        BigDecimal parts,
        BigDecimal coreCharge,
        @Nullable LocalDate submitBy,
        @Nullable String replaces,
        List<DraftLine> lines,
        List<String> lacks) {
    public Draft {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(completedOn, "completedOn");
        lines = List.copyOf(lines);
        lacks = List.copyOf(lacks);
    }

    /** The sum of the rounded lines. */
    public BigDecimal total() {
        return labour.add(parts).add(coreCharge);
    }

    /** Whether all its amounts are known. */
    public boolean isWhole() {
        return lacks.isEmpty();
    }
}
