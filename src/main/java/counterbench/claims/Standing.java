package counterbench.claims;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Optional;

/**
 * How a claim stands with its credits.
 *
 * @param total what it asks; empty where it states no amount
 * @param credited what came for it, reversals taken off, core credits apart; empty where nothing
 *     came
 * @param state submitted, paid, paid differently, withdrawn or denied
 */
public record Standing(
        Claim claim, Optional<BigDecimal> total, Optional<BigDecimal> credited, State state) {
    /** How a claim may stand. */
    public enum State {
        SUBMITTED("submitted"),
        PAID("paid"),
        PAID_DIFFERENTLY("paid differently"),
        WITHDRAWN("withdrawn"),
        DENIED("denied");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String words() {
            return words;
        }
    }

    /**
     * Of a claim whose facts are cut at the moment that matters, so that a day that it bears has
     * come.
     *
     * @param credits credits of its job; those of other claims do not matter
     */
    public static Standing of(Claim claim, Collection<Credit> credits) {
        Optional<BigDecimal> credited =
                credits.stream()
                        .filter(c -> claim.claim().equals(c.claim()))
                        .filter(c -> c.kind() != Credit.Kind.CORE)
                        .map(Credit::amount)
                        .reduce(BigDecimal::add);
        return new Standing(claim, claim.total(), credited, state(claim, credited));
    }

    private static State state(Claim claim, Optional<BigDecimal> credited) {
        if (claim.deniedOn() != null) {
            return State.DENIED;
        }
        if (claim.withdrawnOn() != null) {
            return State.WITHDRAWN;
        }
        if (credited.isEmpty()) {
            return State.SUBMITTED;
        }
        boolean inFull = claim.total().filter(t -> t.compareTo(credited.get()) == 0).isPresent();
        return inFull ? State.PAID : State.PAID_DIFFERENTLY;
    }

    /** Whether it still stands: neither withdrawn nor denied. */
    public boolean stands() {
        return claim.fallsOn().isEmpty();
    }

    /** Whether money is still to come for it, or too much came. */
    public boolean isOpen() {
        return open().filter(open -> open.signum() != 0).isPresent();
    }

    /** What is still to come, above zero; empty where nothing is. */
    public Optional<BigDecimal> waiting() {
        return open().filter(open -> open.signum() > 0);
    }

    /** What came for it beyond what it asks, above zero; empty where not too much came. */
    public Optional<BigDecimal> overpaid() {
        return open().filter(open -> open.signum() < 0).map(BigDecimal::negate);
    }

    /** What is still to come, below zero where too much came; empty where it stands no more. */
    public Optional<BigDecimal> open() {
        return stands()
                ? total.map(asked -> asked.subtract(credited.orElse(BigDecimal.ZERO)))
                : Optional.empty();
    }
}
