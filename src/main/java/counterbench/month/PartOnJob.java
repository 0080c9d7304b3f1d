package counterbench.month;

import counterbench.shared.Quantity;
import java.util.Objects;

/**
 * One part on one completed job, older numbers that count as it included.
 *
 * @param part the pack's part number
 * @param required what the campaign requires on the vehicle; zero for what goes on the core
 * @param fittedNew new on the vehicle at completion
 * @param refittedOld old on the vehicle at completion
 * @param scrapped scrapped on the job: damaged, left over of a measured part, or taken off again
 * @param left still on the job's bench; below zero if more was used than issued
 * @param amiss whether the job is one to look at for this part
 */
public record PartOnJob(
        String part,
        Quantity required,
        Quantity fittedNew,
        Quantity refittedOld,
        Quantity scrapped,
        Quantity left,
        boolean amiss) {
    public PartOnJob {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(fittedNew, "fittedNew");
        Objects.requireNonNull(refittedOld, "refittedOld");
        Objects.requireNonNull(scrapped, "scrapped");
        Objects.requireNonNull(left, "left");
    }

    /** Whether any of it is on the vehicle, new or old. */
    public boolean isFitted() {
        return !fittedNew.isZero() || !refittedOld.isZero();
    }
}
