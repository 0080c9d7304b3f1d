package counterbench.stock;

import counterbench.campaign.KitTerms;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
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
    private final Map<String, Kit> kits = new HashMap<>();
    private final Map<String, KitTerms> contents = new HashMap<>();

    KitsOfJobs(LedgerFacts facts) {
        facts.arriving().forEach(this::know);
        facts.kits().forEach(this::know);
        for (Issue issue : facts.issues()) {
            if (issue.kit() != null) {
                issued.computeIfAbsent(issue.job(), j -> new HashSet<>()).add(issue.kit());
            }
        }
    }

    private void know(ReceivedKit received) {
        kits.put(received.kit().kit(), received.kit());
        if (received.terms() != null) {
            contents.put(received.kit().kit(), received.terms());
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
        return new SourceOfUse(List.copyOf(issued.getOrDefault(job, Set.of())), kits, contents);
    }
}
