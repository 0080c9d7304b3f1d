package counterbench.shell.claims;

import counterbench.acts.desk.CreditDesk;
import counterbench.acts.desk.MatchCredits.Share;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.claims.matching.Proposal;
import counterbench.claims.matching.Proposal.Ranked;
import counterbench.claims.matching.Proposal.Verdict;
import counterbench.shared.Refused;
import counterbench.shell.Invocation;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Asks a person about doubtful lines, one by one. */
final class AskMatches {
    private static final String REASON = "said by hand";
    private static final String ANSWERS =
            "answer with a number of the list, or with a claim (CN-031), or with several and their"
                    + " amounts (CN-031=600.00 CN-032=812.36); none or Enter leaves the line for"
                    + " later, stop leaves all that are left";

    private final Invocation in;
    private final Supplier<CreditDesk> read;
    private final Consumer<List<Share>> record;
    private CreditDesk desk;

    /**
     * Asks one person.
     *
     * @param desk as it stands before the first question
     * @param read it anew, so that a question knows what was recorded before it
     */
    AskMatches(
            Invocation in,
            CreditDesk desk,
            Supplier<CreditDesk> read,
            Consumer<List<Share>> record) {
        this.in = in;
        this.desk = desk;
        this.read = read;
        this.record = record;
    }

    /** Asks until all are asked or the person stops. */
    void ask(List<Proposal> proposals) {
        for (Proposal proposal : proposals) {
            if (proposal.verdict() == Verdict.DOUBTFUL
                    && !asItStands(proposal.credit()).map(this::ask).orElse(true)) {
                in.tell("stopped; what was said is recorded, the rest waits");
                return;
            }
        }
    }

    /** What is to become of a line by now; nothing where it names its claim rightly meanwhile. */
    private Optional<Proposal> asItStands(Credit credit) {
        return desk.proposals().stream()
                .filter(p -> p.credit().equals(credit))
                .filter(p -> p.verdict() != Verdict.AS_NAMED)
                .findFirst();
    }

    private boolean ask(Proposal proposal) {
        Credit credit = proposal.credit();
        in.print(
                "credit "
                        + credit.name()
                        + " of "
                        + credit.paidOn()
                        + ", "
                        + Money.text(credit.amount())
                        + ", names "
                        + names(credit)
                        + ": "
                        + proposal.why());
        List<Ranked> ranked = proposal.choices();
        for (int i = 0; i < ranked.size(); i++) {
            Ranked one = ranked.get(i);
            in.print(
                    "  "
                            + (i + 1)
                            + "  claim "
                            + one.candidate().name()
                            + " for job "
                            + one.candidate().claim().job()
                            + ": "
                            + one.likeness().words());
        }
        return answered(proposal);
    }

    private boolean answered(Proposal proposal) {
        while (true) {
            String said =
                    in.ask("Which? [a number, CLAIM, CLAIM=AMOUNT ..., none, stop, help] ")
                            .orElse("stop")
                            .strip();
            switch (said.toLowerCase(Locale.ROOT)) {
                case "stop" -> {
                    return false;
                }
                case "", "none" -> {
                    in.tell("credit " + proposal.credit().name() + " is left as it is");
                    return true;
                }
                case "help", "?" -> in.tell(ANSWERS);
                default -> {
                    if (isRecorded(proposal, said)) {
                        return true;
                    }
                }
            }
        }
    }

    private boolean isRecorded(Proposal proposal, String said) {
        try {
            record.accept(shares(proposal, said));
            desk = read.get();
            return true;
        } catch (Refused e) {
            in.tell(String.valueOf(e.getMessage()));
            in.tell(ANSWERS);
            return false;
        }
    }

    private List<Share> shares(Proposal proposal, String said) {
        SharedOut out = new SharedOut(desk, REASON);
        List<Ranked> choices = proposal.choices();
        if (!said.matches("[0-9]+") || desk.jobs().containsKey(said)) {
            return out.of(proposal.credit(), Arrays.asList(said.split("[\\s,]+", -1)));
        }
        BigInteger number = new BigInteger(said);
        if (number.signum() == 0 || number.compareTo(BigInteger.valueOf(choices.size())) > 0) {
            throw new Refused(
                    "number \"" + said + "\"",
                    choices.isEmpty()
                            ? "there is no list to choose from"
                            : "the list goes from 1 to " + choices.size(),
                    "");
        }
        String claim = choices.get(number.intValue() - 1).candidate().name();
        return out.of(proposal.credit(), List.of(claim));
    }

    /** What a line names. */
    static String names(Credit credit) {
        String names =
                Stream.of(credit.claim(), credit.vin(), credit.core(), credit.serial())
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(" "));
        return names.isEmpty() ? "nothing" : names;
    }
}
