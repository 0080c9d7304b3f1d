package counterbench.month;

import counterbench.shared.Quantity;
import java.util.Objects;

/**
 * One part on one completed job.
 *
 * @param required what the campaign requires on the vehicle; zero for what goes on the core
 * @param atLeast for a measured part the least that must be fitted, else as required
 * @param exact whether more than required is wrong, too: so for counted parts
 * @param judged whether required and fitted are compared at all: not where it cannot be told
 *     whether the part applies to the vehicle, and not for what goes on the core
 * @param singleUse whether refitting an old one is wrong
 * @param fittedNew new on the vehicle at completion
 * @param refittedOld old on the vehicle at completion
 * @param scrapped scrapped on the job: damaged, left over of a measured part, or taken off again
 * @param left still on the job's bench; below zero if more was used than issued
 */
public record PartOnJob(
        String part,
        Quantity required,
        Quantity atLeast,
        boolean exact,
        boolean judged,
        boolean singleUse,
        Quantity fittedNew,
        Quantity refittedOld,
        Quantity scrapped,
        Quantity left) {
    public PartOnJob {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(atLeast, "atLeast");
        Objects.requireNonNull(fittedNew, "fittedNew");
        Objects.requireNonNull(refittedOld, "refittedOld");
        Objects.requireNonNull(scrapped, "scrapped");
        Objects.requireNonNull(left, "left");
    }

    /** All of it on the vehicle, new or old. */
    public Quantity fitted() {
        return fittedNew.plus(refittedOld);
    }

    /** Whether the job is one to look at for this part. */
    public boolean isAmiss() {
        return !left.isZero() || (singleUse && refittedOld.isPositive()) || isShortOrOver();
    }

    private boolean isShortOrOver() {
        return judged && (fitted().isLessThan(atLeast) || (exact && required.isLessThan(fitted())));
    }

    /** This with what another part number that counts as this one adds. */
    PartOnJob plus(PartOnJob other) {
        return new PartOnJob(
                part,
                required.plus(other.required),
                atLeast.plus(other.atLeast),
                exact && other.exact,
                judged && other.judged,
                singleUse || other.singleUse,
                fittedNew.plus(other.fittedNew),
                refittedOld.plus(other.refittedOld),
                scrapped.plus(other.scrapped),
                left.plus(other.left));
    }
}
