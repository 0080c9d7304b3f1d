package counterbench.stock;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which kits were issued to which job, at whatever time: paper that says so a little late still
 * says whose kit it was.
 */
final class KitsOfJobs {
    private final Map<String, Set<String>> issued = new HashMap<>();
    private final Map<String, SourceOfUse> sources = new HashMap<>();
    private final KnownKits known;

    KitsOfJobs(LedgerFacts facts) {
        known = KnownKits.of(facts);
        for (Issue issue : facts.issues()) {
            if (issue.kit() != null) {
                issued.computeIfAbsent(issue.job(), j -> new HashSet<>()).add(issue.kit());
            }
        }
    }

    boolean wasIssued(String kit, String job) {
        return issued.getOrDefault(job, Set.of()).contains(kit);
    }

    /** The kit that a use is taken from, if it is any. */
    Optional<String> kitOf(Use use) {
        return sources.computeIfAbsent(use.job(), this::source).kitOf(use);
    }

    private SourceOfUse source(String job) {
        return known.sourceOf(issued.getOrDefault(job, Set.of()));
    }
}
