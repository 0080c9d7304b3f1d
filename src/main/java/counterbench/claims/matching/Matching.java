package counterbench.claims.matching;

import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.claims.matching.Proposal.Ranked;
import counterbench.claims.matching.Proposal.Share;
import counterbench.claims.matching.Proposal.Verdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pairs credits with claims. A pair is taken by itself only where it is the one good match for both
 * sides by a clear margin; all else is for a person to say.
 */
public final class Matching {
    /** Points from which a match is good. */
    private static final int GOOD = 10;

    /** Points that nothing beats that shares no name exactly. */
    static final int VERY_GOOD = 13;

    /** How many points the next best must be behind. */
    private static final int MARGIN = 5;

    private static final Pattern BETWEEN_CLAIMS = Pattern.compile("\\s*[,;+&]\\s*|\\s+and\\s+");

    private final Candidates candidates;
    private final Map<String, BigDecimal> named;

    private Matching(Candidates candidates, Map<String, BigDecimal> named) {
        this.candidates = candidates;
        this.named = named;
    }

    /**
     * What is to become of each credit, in their order.
     *
     * @param credits those that nobody matched yet; core credits only where they name no core that
     *     is known; naming a claim does not do for these, since they are for a core
     */
    public static List<Proposal> of(Collection<Credit> credits, Collection<Candidate> claims) {
        List<Proposal> first = once(credits, claims);
        List<Credit> rest =
                first.stream().filter(p -> !isAsNamed(p)).map(Proposal::credit).toList();
        Iterator<Proposal> again = once(rest, afterNamed(first, claims)).iterator();
        return first.stream().map(p -> isAsNamed(p) ? p : again.next()).toList();
    }

    private static boolean isAsNamed(Proposal proposal) {
        return proposal.verdict() == Verdict.AS_NAMED;
    }

    /** The claims when what names them rightly has come, so that the rest sees what is open. */
    private static List<Candidate> afterNamed(
            List<Proposal> proposals, Collection<Candidate> claims) {
        Map<String, BigDecimal> came =
                named(proposals.stream().filter(Matching::isAsNamed).map(Proposal::credit));
        return claims.stream()
                .map(c -> c.withMore(came.getOrDefault(c.name(), BigDecimal.ZERO)))
                .toList();
    }

    /** What credits bring to the claims that they name, core credits apart. */
    private static Map<String, BigDecimal> named(Stream<Credit> credits) {
        Map<String, BigDecimal> named = new HashMap<>();
        credits.filter(c -> c.claim() != null && c.kind() != Credit.Kind.CORE)
                .forEach(c -> named.merge(c.claim(), c.amount(), BigDecimal::add));
        return named;
    }

    private static List<Proposal> once(Collection<Credit> credits, Collection<Candidate> claims) {
        Map<String, BigDecimal> named = named(credits.stream());
        Matching matching = new Matching(new Candidates(claims), named);
        List<Proposal> proposals = credits.stream().map(matching::propose).toList();
        return matching.bothSides(proposals);
    }

    private Proposal propose(Credit credit) {
        List<Ranked> ranked = candidates.ranked(credit);
        Optional<Candidate> itsClaim = candidates.named(credit.claim());
        if (itsClaim.isPresent() && credit.kind() != Credit.Kind.CORE) {
            return ofNamed(credit, itsClaim.get(), ranked);
        }
        Optional<Proposal> several = several(credit, ranked);
        return several.orElseGet(() -> ofUnnamed(credit, ranked));
    }

    /** One that names a claim that there is: does anything else support that? */
    private Proposal ofNamed(Credit credit, Candidate claim, List<Ranked> ranked) {
        Likeness likeness = Likeness.of(credit, claim);
        String doubt = null;
        if (likeness.contradicted()) {
            doubt = "it names claim " + claim.name() + ", but " + against(likeness);
        } else if (!isSupported(claim, likeness)) {
            doubt = "nothing but the number says that it is claim " + claim.name();
        } else {
            doubt = beyond(claim, credit.amount(), named);
        }
        return doubt == null
                ? new Proposal(
                        credit,
                        Verdict.AS_NAMED,
                        List.of(),
                        ranked,
                        "it names claim " + claim.name())
                : new Proposal(
                        credit,
                        Verdict.DOUBTFUL,
                        List.of(),
                        claim.isThereFor(credit) ? withNamed(ranked, claim, likeness) : ranked,
                        doubt);
    }

    private static List<Ranked> withNamed(List<Ranked> ranked, Candidate claim, Likeness likeness) {
        if (ranked.stream().anyMatch(r -> r.candidate().equals(claim))) {
            return ranked;
        }
        List<Ranked> all = new ArrayList<>(ranked);
        all.add(new Ranked(claim, likeness));
        return all;
    }

    private static String against(Likeness likeness) {
        return String.join(", ", likeness.speaksAgainst());
    }

    /** The lines that name a claim may make up its total together. */
    private boolean isSupported(Candidate claim, Likeness likeness) {
        boolean together =
                claim.claim().total().filter(total -> total.compareTo(sum(claim)) == 0).isPresent();
        return likeness.speaksFor().size() > 1 || together;
    }

    private BigDecimal sum(Candidate claim) {
        return claim.credited().add(named.getOrDefault(claim.name(), BigDecimal.ZERO));
    }

    /**
     * Why a share of a claim cannot be right beside all that comes for it; null where it can.
     *
     * @param coming what comes for each claim, that share included
     */
    private static @Nullable String beyond(
            Candidate claim, BigDecimal amount, Map<String, BigDecimal> coming) {
        BigDecimal more = coming.getOrDefault(claim.name(), BigDecimal.ZERO);
        if (isTooMuch(claim, more)) {
            return "with it, more comes for claim " + claim.name() + " than it asks";
        }
        boolean isTooLittle = claim.credited().add(more).signum() < 0;
        return isTooLittle && claim.isTakenBackInPartBy(amount)
                ? "with it, more is taken back from claim " + claim.name() + " than came for it"
                : null;
    }

    private static boolean isTooMuch(Candidate claim, BigDecimal more) {
        return claim.claim()
                .total()
                .filter(total -> claim.credited().add(more).compareTo(total) > 0)
                .isPresent();
    }

    /** One that names several claims and comes to what is open for all of them. */
    private Optional<Proposal> several(Credit credit, List<Ranked> ranked) {
        @Nullable String said = credit.claim();
        if (said == null || credit.kind() == Credit.Kind.CORE) {
            return Optional.empty();
        }
        String[] names = BETWEEN_CLAIMS.split(said.strip(), -1);
        List<Share> shares =
                Arrays.stream(names)
                        .distinct()
                        .flatMap(name -> candidates.named(name).stream())
                        .flatMap(c -> c.open().map(open -> new Share(c, open)).stream())
                        .toList();
        if (names.length < 2 || shares.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(sharedOut(credit, shares, shares.size() == names.length, ranked));
    }

    private static Proposal sharedOut(
            Credit credit, List<Share> shares, boolean allThere, List<Ranked> ranked) {
        BigDecimal sum = Money.sum(shares.stream().map(Share::amount).toList());
        List<Ranked> all =
                shares.stream()
                        .map(s -> new Ranked(s.candidate(), Likeness.of(credit, s.candidate())))
                        .toList();
        List<Ranked> those = all.stream().filter(r -> r.candidate().isThereFor(credit)).toList();
        boolean possible = all.stream().noneMatch(r -> r.likeness().contradicted());
        if (allThere && possible && sum.compareTo(credit.amount()) == 0) {
            return new Proposal(
                    credit,
                    Verdict.SURE,
                    shares,
                    those,
                    "it names " + credit.claim() + " and is what is open for all of them");
        }
        return doubtful(
                credit,
                those.isEmpty() ? ranked : those,
                "it names " + credit.claim() + ", for which " + Money.text(sum) + " is open");
    }

    private static Proposal ofUnnamed(Credit credit, List<Ranked> ranked) {
        if (ranked.isEmpty()) {
            return new Proposal(credit, Verdict.UNKNOWN, List.of(), ranked, "no claim is like it");
        }
        Likeness best = ranked.get(0).likeness();
        if (best.contradicted()) {
            return doubtful(credit, ranked, against(best));
        }
        if (best.points() < GOOD) {
            return doubtful(credit, ranked, "too little speaks for it: " + best.words());
        }
        if (ranked.size() > 1 && best.points() - ranked.get(1).likeness().points() < MARGIN) {
            return doubtful(
                    credit,
                    ranked,
                    "claim " + ranked.get(1).candidate().name() + " is nearly as like");
        }
        return new Proposal(
                credit,
                Verdict.SURE,
                List.of(new Share(ranked.get(0).candidate(), credit.amount())),
                ranked,
                best.words());
    }

    private static Proposal doubtful(Credit credit, List<Ranked> ranked, String why) {
        return new Proposal(credit, Verdict.DOUBTFUL, List.of(), ranked, why);
    }

    /** Where more would come for a claim than it asks, no credit of those is sure. */
    private List<Proposal> bothSides(List<Proposal> proposals) {
        Map<String, BigDecimal> coming = new HashMap<>(named);
        named.keySet().stream().filter(n -> candidates.named(n).isEmpty()).forEach(coming::remove);
        proposals.forEach(
                p ->
                        payments(p)
                                .forEach(
                                        s ->
                                                coming.merge(
                                                        s.candidate().name(),
                                                        s.amount(),
                                                        BigDecimal::add)));
        return proposals.stream().map(p -> checked(p, coming)).toList();
    }

    private static List<Share> payments(Proposal proposal) {
        return proposal.credit().kind() == Credit.Kind.CORE ? List.of() : proposal.shares();
    }

    private static Proposal checked(Proposal proposal, Map<String, BigDecimal> coming) {
        return payments(proposal).stream()
                .flatMap(s -> Stream.ofNullable(beyond(s.candidate(), s.amount(), coming)))
                .findFirst()
                .map(proposal::doubted)
                .orElse(proposal);
    }
}
