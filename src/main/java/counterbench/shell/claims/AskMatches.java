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
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Asks a person about doubtful lines, one by one. */
final class AskMatches {
    private static final String REASON = "said by hand";

    private final Invocation in;
    private final CreditDesk desk;
    private final Consumer<List<Share>> record;

    AskMatches(Invocation in, CreditDesk desk, Consumer<List<Share>> record) {
        this.in = in;
        this.desk = desk;
        this.record = record;
    }

    /** Asks until all are asked or the person stops. */
    void ask(List<Proposal> proposals) {
        for (Proposal proposal : proposals) {
            if (proposal.verdict() == Verdict.DOUBTFUL && !ask(proposal)) {
                in.tell("stopped; what was said is recorded, the rest waits");
                return;
            }
        }
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
        List<Ranked> ranked = proposal.ranked();
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
            Optional<String> answer =
                    in.ask("Which? [a number, CLAIM, CLAIM=AMOUNT ..., none, stop] ");
            String said = answer.orElse("stop").strip();
            if (said.toLowerCase(Locale.ROOT).equals("stop")) {
                return false;
            }
            if (said.isEmpty() || said.toLowerCase(Locale.ROOT).equals("none")) {
                return true;
            }
            try {
                record.accept(shares(proposal, said));
                return true;
            } catch (Refused e) {
                in.tell(String.valueOf(e.getMessage()));
            }
        }
    }

    private List<Share> shares(Proposal proposal, String said) {
        SharedOut out = new SharedOut(desk, REASON);
        if (said.matches("[1-9]") && Integer.parseInt(said) <= proposal.ranked().size()) {
            Ranked chosen = proposal.ranked().get(Integer.parseInt(said) - 1);
            return out.of(proposal.credit(), List.of(chosen.candidate().name()));
        }
        return out.of(proposal.credit(), Arrays.asList(said.split("[\\s,]+", -1)));
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
