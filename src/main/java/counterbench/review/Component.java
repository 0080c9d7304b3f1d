package counterbench.review;

import counterbench.stock.LedgerFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Jobs and kits that no issue and no use links with any other: usually one job with its kit.
 *
 * @param kits serials of the kits that it names
 * @param facts the facts from which their moves follow
 * @param nextFact when the first fact happens that was left out because it lies after the review
 */
public record Component(
        List<JobFile> jobs, List<String> kits, LedgerFacts facts, Optional<Instant> nextFact) {
    public Component {
        jobs = List.copyOf(jobs);
        kits = List.copyOf(kits);
    }
}
