package counterbench.acts.desk;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.claims.ClaimNumbers;
import counterbench.claims.draft.Draft;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.review.Settlements;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.stock.Move;
import counterbench.stock.StoreCosts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Submits a claim for each of some jobs, with the amounts of its draft, all of them or none.
 *
 * @param jobs the jobs, in the order of their claims' numbers
 * @param parts loose parts that went to these jobs, which the situation must know
 * @param number the claim's number, where there is one job; else the site's next ones
 * @param on the day of submission
 * @param override why the lead submits against the review; null where nobody does
 */
public record SubmitClaims(
        List<String> jobs,
        Set<String> parts,
        @Nullable String number,
        LocalDate on,
        @Nullable String override,
        Stamp stamp)
        implements Act {
    /** The gate that an override opens. */
    public static final String GATE = "claim submit";

    public SubmitClaims {
        jobs = List.copyOf(jobs);
        parts = Set.copyOf(parts);
    }

    @Override
    public FactKind makes() {
        return FactKind.CLAIMS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withJobs(jobs).withParts(parts);
    }

    @Override
    public Decision decide(Situation situation) {
        refuseTaken(situation);
        StoreCosts costs = costs(situation);
        Settlements settled = situation.directory().settlements();
        List<String> numbers = new ArrayList<>(situation.directory().claims());
        List<FactRow> rows = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        boolean held = false;
        for (String name : jobs) {
            ClaimCase found = ClaimCase.demand(situation.job(name), asked(name));
            Draft draft = found.draft(costs, situation.directory());
            problems.addAll(lacks(draft));
            List<Against> against = found.against(on, settled);
            if (override == null) {
                against.forEach(a -> problems.add(new Problem(asked(name), a.why(), a.todo())));
                held |= !against.isEmpty();
            } else if (!against.isEmpty()) {
                rows.add(opened(name, against));
            }
            String claim = number == null ? next(numbers, situation) : number;
            numbers.add(claim);
            rows.add(row(claim, draft, situation));
        }
        refuse(problems, held);
        return new Decision(rows, List.of());
    }

    private void refuseTaken(Situation situation) {
        if (number != null && situation.directory().claims().contains(number)) {
            throw new Refused(
                    "claim \"" + number + "\"",
                    "that number is taken",
                    "leave --claim out for the next free one, "
                            + next(List.copyOf(situation.directory().claims()), situation));
        }
    }

    /**
     * Refuses for these problems, if there are any.
     *
     * @param held whether the lead could override some of them
     */
    private static void refuse(List<Problem> problems, boolean held) {
        if (held) {
            problems.add(
                    new Problem(
                            GATE,
                            "nothing was submitted while that stands against it",
                            "put it right first; the lead may override it with --override REASON"));
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
    }

    private static String next(List<String> numbers, Situation situation) {
        return ClaimNumbers.next(numbers, situation.site().site());
    }

    private static StoreCosts costs(Situation situation) {
        List<Move> moves =
                situation.shelves().stream()
                        .map(part -> situation.shelf(part).moves())
                        .flatMap(Collection::stream)
                        .toList();
        return StoreCosts.of(
                moves, new InboundCosts(situation.terms(), situation.directory()::costElsewhere));
    }

    private static String asked(String job) {
        return "claim for job \"" + job + "\"";
    }

    private static List<Problem> lacks(Draft draft) {
        return draft.lacks().stream()
                .map(why -> new Problem(asked(draft.job()), why, "then draft it again"))
                .toList();
    }

    private FactRow opened(String job, List<Against> against) {
        String words = against.stream().map(Against::why).collect(Collectors.joining("; "));
        int most = ColumnType.NOTE.maxLength();
        return FactRow.of(FactKind.OVERRIDES)
                .with("gate", GATE)
                .with("subject", "job " + job)
                .with("at", stamp.at())
                .with("reason", override)
                .with("findings", words.substring(0, Math.min(words.length(), most)));
    }

    private FactRow row(String claim, Draft draft, Situation situation) {
        return FactRow.of(FactKind.CLAIMS)
                .with("claim", claim)
                .with("job", draft.job())
                .with("submitted_on", on)
                .with("labour_hours", draft.hours())
                .with("labour_amount", draft.labour())
                .with("parts_amount", draft.parts())
                .with("core_charge", draft.coreCharge())
                .with("currency", situation.site().currency().getCurrencyCode())
                .with("replaces", draft.replaces())
                .with("by", stamp.by());
    }
}
