package counterbench.claims.matching;

import counterbench.claims.Credit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * What is to become of a credit.
 *
 * @param shares what of it goes to which claim, where that is sure; else empty
 * @param ranked claims that it may belong to, the likeliest first; few of them
 * @param why why it is not sure, or on what ground it is
 */
public record Proposal(
        Credit credit, Verdict verdict, List<Share> shares, List<Ranked> ranked, String why) {
    public Proposal {
        Objects.requireNonNull(credit, "credit");
        Objects.requireNonNull(verdict, "verdict");
        shares = List.copyOf(shares);
        ranked = List.copyOf(ranked);
    }

    /** How sure it is. */
    public enum Verdict {
        /** It names its claim rightly; nothing is to be recorded. */
        AS_NAMED("as named"),
        /** It is the one good match for both sides. */
        SURE("sure"),
        /** A person has to say. */
        DOUBTFUL("doubtful"),
        /** Nothing fits. */
        UNKNOWN("unknown");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String words() {
            return words;
        }
    }

    /** So much of a credit for a claim. */
    public record Share(Candidate candidate, BigDecimal amount) {}

    /** A claim and how well it fits. */
    public record Ranked(Candidate candidate, Likeness likeness) {}

    /**
     * The claims that a person may choose from, the best first: paid ones only where the line names
     * them, or where there are no others.
     */
    public List<Ranked> choices() {
        List<Ranked> choices =
                ranked.stream()
                        .filter(
                                r ->
                                        r.candidate().mayTake(credit)
                                                || r.candidate().isNamedBy(credit))
                        .toList();
        return choices.isEmpty() ? ranked : choices;
    }

    /** The claims that fit best; several where they fit equally well. */
    public List<Ranked> best() {
        List<Ranked> choices = choices();
        return choices.stream()
                .filter(r -> r.likeness().points() == choices.get(0).likeness().points())
                .toList();
    }

    /** The same, to be asked. */
    Proposal doubted(String because) {
        return new Proposal(credit, Verdict.DOUBTFUL, List.of(), ranked, because);
    }
}
