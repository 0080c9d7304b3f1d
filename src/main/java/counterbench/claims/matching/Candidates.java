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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All claims, found by what credits name; those that no credit names exactly are gone through. */
final class Candidates {
    private static final int MOST = 5;

    /** However many fit alike: a person answers with one digit. */
    private static final int AT_MOST = 9;

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

    /**
     * The best of those that may take the credit, and of those that are paid in full; none that was
     * submitted after it was paid.
     */
    private static List<Ranked> rank(Credit credit, Collection<Candidate> some) {
        Map<Boolean, List<Ranked>> ranked =
                some.stream()
                        .filter(candidate -> candidate.isThereFor(credit))
                        .map(candidate -> new Ranked(candidate, Likeness.of(credit, candidate)))
                        .filter(r -> !r.likeness().speaksFor().isEmpty())
                        .filter(r -> r.likeness().points() > 0)
                        .sorted(BEST_FIRST)
                        .collect(Collectors.partitioningBy(r -> r.candidate().mayTake(credit)));
        return ranked.values().stream().flatMap(Candidates::first).sorted(BEST_FIRST).toList();
    }

    /** The first few, with those that fit as well as the last of them. */
    private static Stream<Ranked> first(List<Ranked> ranked) {
        int least = ranked.size() < MOST ? 0 : ranked.get(MOST - 1).likeness().points();
        return ranked.stream().takeWhile(r -> r.likeness().points() >= least).limit(AT_MOST);
    }
}
