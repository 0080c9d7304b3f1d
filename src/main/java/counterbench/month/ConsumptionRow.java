package counterbench.month;

import counterbench.shared.Quantity;
import java.util.List;
import java.util.Objects;

/**
 * What the completed jobs of a campaign and month required and used of one part, older numbers that
 * count as it included.
 *
 * @param completedJobs how many jobs were completed, whether or not they require the part
 * @param required what the campaign requires on their vehicles
 * @param scrapped what was scrapped on them, left-overs of measured parts included
 * @param leftOnBenches what still lies on their benches, net
 * @param jobs those for which a cell is not as it should be, sorted
 */
public record ConsumptionRow(
        String part,
        long completedJobs,
        Quantity required,
        Quantity fittedNew,
        Quantity refittedOld,
        Quantity scrapped,
        Quantity leftOnBenches,
        List<String> jobs) {
    public ConsumptionRow {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(fittedNew, "fittedNew");
        Objects.requireNonNull(refittedOld, "refittedOld");
        Objects.requireNonNull(scrapped, "scrapped");
        Objects.requireNonNull(leftOnBenches, "leftOnBenches");
        jobs = List.copyOf(jobs);
    }

    /** Fitted new and refitted old, less what is required. */
    public Quantity difference() {
        return fittedNew.plus(refittedOld).minus(required);
    }
}
