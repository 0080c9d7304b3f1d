package counterbench.claims.matching;

import counterbench.claims.Credit;
import counterbench.claims.Money;
import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How well a credit fits a claim. The points weigh what each field tells: a VIN is longer and rarer
 * than a claim's number, and many claims ask the same amount. The weights are our own judgement, no
 * published ones; a test on made-up remittances holds them.
 *
 * @param points the more, the better it fits
 * @param speaksFor what fits
 * @param speaksAgainst what does not
 * @param contradicted whether something cannot be so if it is this claim
 */
public record Likeness(
        int points, List<String> speaksFor, List<String> speaksAgainst, boolean contradicted) {
    private static final long USUAL_DAYS = 120;

    public Likeness {
        speaksFor = List.copyOf(speaksFor);
        speaksAgainst = List.copyOf(speaksAgainst);
    }

    /** Of a credit and a claim. */
    public static Likeness of(Credit credit, Candidate candidate) {
        return new Weighing(credit, candidate).likeness();
    }

    /** Everything that speaks for and against, in words. */
    public String words() {
        List<String> words = new ArrayList<>(speaksFor);
        speaksAgainst.forEach(against -> words.add("but " + against));
        return String.join(", ", words);
    }

    /** One weighing. */
    private static final class Weighing {
        private final Credit credit;
        private final Candidate candidate;
        private final List<String> speaksFor = new ArrayList<>();
        private final List<String> speaksAgainst = new ArrayList<>();
        private int points;
        private boolean contradicted;

        Weighing(Credit credit, Candidate candidate) {
            this.credit = credit;
            this.candidate = candidate;
        }

        Likeness likeness() {
            name("claim", credit.claim(), candidate.name(), new Weights(6, 4, 0, -1), false);
            name("VIN", credit.vin(), candidate.vin(), new Weights(8, 7, 5, -8), true);
            cores();
            amount();
            date();
            if (!candidate.stands()) {
                against(-6, "the claim stands no more", true);
            }
            return new Likeness(points, speaksFor, speaksAgainst, contradicted);
        }

        private record Weights(int same, int oneSlip, int twoSlips, int other) {}

        private boolean name(
                String what,
                @Nullable String said,
                @Nullable String known,
                Weights weights,
                boolean mustFit) {
            if (said == null || known == null) {
                return false;
            }
            int slips = Slips.between(said, known);
            switch (slips) {
                case 0 -> speaks(weights.same(), "the " + what + " fits");
                case 1 -> speaks(weights.oneSlip(), "the " + what + " is one slip from " + known);
                case 2 -> {
                    if (weights.twoSlips() == 0) {
                        against(weights.other(), "it names " + what + " " + said, mustFit);
                    } else {
                        speaks(weights.twoSlips(), "the " + what + " is two slips from " + known);
                    }
                }
                default -> against(weights.other(), "it names " + what + " " + said, mustFit);
            }
            return slips < 2;
        }

        private void cores() {
            if (candidate.cores().isEmpty() || (credit.core() == null && credit.serial() == null)) {
                return;
            }
            Candidate.Core nearest = nearest();
            Weights weights = new Weights(6, 4, 0, -4);
            name("core", credit.core(), nearest.tag(), weights, false);
            name("serial", credit.serial(), nearest.serial(), weights, false);
        }

        private Candidate.Core nearest() {
            return candidate.cores().stream()
                    .min(Comparator.comparingInt(this::slips))
                    .orElseThrow();
        }

        private int slips(Candidate.Core core) {
            return slips(credit.core(), core.tag()) + slips(credit.serial(), core.serial());
        }

        private static int slips(@Nullable String said, @Nullable String known) {
            return said == null || known == null ? 2 : Slips.between(said, known);
        }

        private void amount() {
            BigDecimal amount = credit.amount();
            if (credit.kind() == Credit.Kind.CORE) {
                return;
            }
            Optional<BigDecimal> total = candidate.claim().total();
            if (amount.signum() < 0) {
                if (total.filter(t -> t.compareTo(amount.negate()) == 0).isPresent()) {
                    speaks(3, "it takes back what the claim asks");
                } else if (candidate.isTakenBackInPartBy(amount)) {
                    speaks(3, "it takes back part of what came for the claim");
                } else {
                    against(-2, "it takes back more than came for the claim", false);
                }
                return;
            }
            if (candidate.open().filter(open -> open.compareTo(amount) == 0).isPresent()) {
                speaks(4, "the amount is what is open");
            } else if (candidate.hasLine(amount)) {
                speaks(2, "the amount is that of its lines");
            } else {
                against(-1, "the amount is not what is open, " + open(), false);
            }
        }

        private String open() {
            return candidate.open().map(Money::text).orElse("which it does not state");
        }

        private void date() {
            long days = ChronoUnit.DAYS.between(candidate.claim().submittedOn(), credit.paidOn());
            if (!candidate.isThereFor(credit)) {
                against(-10, "it was paid before the claim was submitted", true);
            } else if (Math.abs(days) <= USUAL_DAYS) {
                points += 1;
            }
        }

        private void speaks(int weight, String what) {
            points += weight;
            speaksFor.add(what);
        }

        private void against(int weight, String what, boolean cannotBe) {
            points += weight;
            speaksAgainst.add(what);
            contradicted |= cannotBe;
        }
    }
}
