package counterbench.claims.matching;

import counterbench.claims.Credit;
import counterbench.claims.matching.Proposal.Ranked;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** All claims, found by what credits name; those that no credit names exactly are gone through. */
final class Candidates {
    private static final int MOST = 5;
    private static final Comparator<Ranked> BEST_FIRST =
            Comparator.comparingInt((Ranked r) -> -r.likeness().points())
                    .thenComparing(r -> r.candidate().name());

    private final List<Candidate> all;
    private final Map<String, Candidate> byName = new HashMap<>();
    private final Map<String, List<Candidate>> byField = new HashMap<>();

    Candidates(Collection<Candidate> all) {
        this.all = List.copyOf(all);
        for (Candidate candidate : all) {
            byName.put(candidate.name(), candidate);
            index("vin", candidate.vin(), candidate);
            for (Candidate.Core core : candidate.cores()) {
                index("core", core.tag(), candidate);
                index("serial", core.serial(), candidate);
            }
        }
    }

    private void index(String field, @Nullable String value, Candidate candidate) {
        if (value != null) {
            byField.computeIfAbsent(field + Slips.plain(value), f -> new ArrayList<>())
                    .add(candidate);
        }
    }

    /** The claim of that number. */
    Optional<Candidate> named(@Nullable String claim) {
        return Optional.ofNullable(byName.get(claim));
    }

    /** Those that fit best, whatever little speaks for them. */
    List<Ranked> ranked(Credit credit) {
        Set<Candidate> near = new LinkedHashSet<>();
        named(credit.claim()).ifPresent(near::add);
        near.addAll(having("vin", credit.vin()));
        near.addAll(having("core", credit.core()));
        near.addAll(having("serial", credit.serial()));
        List<Ranked> ranked = rank(credit, near);
        boolean clear =
                ranked.size() > 0 && ranked.get(0).likeness().points() >= Matching.VERY_GOOD;
        return clear ? ranked : rank(credit, all);
    }

    private List<Candidate> having(String field, @Nullable String value) {
        return value == null
                ? List.of()
                : byField.getOrDefault(field + Slips.plain(value), List.of());
    }

    private static List<Ranked> rank(Credit credit, Collection<Candidate> some) {
        return some.stream()
                .map(candidate -> new Ranked(candidate, Likeness.of(credit, candidate)))
                .filter(ranked -> !ranked.likeness().speaksFor().isEmpty())
                .filter(ranked -> ranked.likeness().points() > 0)
                .sorted(BEST_FIRST)
                .limit(MOST)
                .toList();
    }
}
