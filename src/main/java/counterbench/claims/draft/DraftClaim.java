package counterbench.claims.draft;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.ClaimTerms.Operation;
import counterbench.campaign.Condition.Holds;
import counterbench.claims.Claim;
import counterbench.claims.draft.DraftLine.Kind;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Works out what a job can be claimed for: labour hours of the operation for its outcome at the
 * site's rate of the day of completion, parts at cost with the campaign's allowance, and the core
 * charge of the terms.
 *
 * @param terms the claim terms of the pack that the job is judged by
 * @param attributes the vehicle's attributes; none where it is unlisted
 * @param coreCharge what the terms charge for the job's cores, unrounded
 * @param before claims for the job that stand no more
 */
public record DraftClaim(
        Site site,
        Job job,
        ClaimTerms terms,
        Map<String, String> attributes,
        Collection<Rate> rates,
        PartsCost cost,
        BigDecimal coreCharge,
        Collection<Claim> before) {
    private static final String OUTCOME = "outcome";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * Whether a job is done, as claims see it: it was completed, or it was closed as not needed and
     * the terms pay for that.
     */
    public static boolean isDone(Job job, @Nullable ClaimTerms terms) {
        return job.isCompleted()
                || (job.outcome() == Outcome.NOT_NEEDED
                        && job.completedAt() != null
                        && terms != null
                        && terms.payFor(Outcome.NOT_NEEDED.word()));
    }

    /** The draft. */
    public Draft draft() {
        List<String> lacks = new ArrayList<>(cost.unknown());
        LocalDate day = site.dayOf(Objects.requireNonNull(job.completedAt()));
        Optional<Operation> operation = operation(lacks);
        Optional<Rate> rate = Rate.on(day, rates);
        if (rate.isEmpty()) {
            lacks.add("no labour rate holds on " + day + ": import it with a sheet called rates");
        }
        if (job.workOrder() == null) {
            lacks.add("the job names no work order: import its row of jobs with the number");
        }
        BigDecimal hours = operation.map(Operation::hours).orElse(BigDecimal.ZERO);
        BigDecimal hour = rate.map(Rate::amount).orElse(BigDecimal.ZERO);
        String numbered = operation.map(Operation::operation).orElse("");
        return new Draft(
                job.job(),
                job.campaign(),
                job.vin(),
                job.workOrder(),
                day,
                numbered,
                hours,
                cents(hours.multiply(hour)),
                cents(withAllowance(cost.amount())),
                cents(coreCharge),
                terms.lastDay(day).orElse(null),
                replaced().orElse(null),
                lines(numbered, hours, hour),
                lacks);
    }

    private List<DraftLine> lines(String operation, BigDecimal hours, BigDecimal hour) {
        List<DraftLine> lines = new ArrayList<>();
        lines.add(
                new DraftLine(
                        Kind.LABOUR,
                        "operation " + operation,
                        hours,
                        hour,
                        cents(hours.multiply(hour))));
        cost.items().stream()
                .map(
                        item ->
                                new DraftLine(
                                        Kind.PARTS,
                                        item.what(),
                                        item.quantity().amount(),
                                        item.unitAmount(),
                                        item.amount()))
                .forEach(lines::add);
        BigDecimal allowance = cents(withAllowance(cost.amount())).subtract(cost.amount());
        if (allowance.signum() != 0) {
            String percent = terms.partsAllowancePercent().stripTrailingZeros().toPlainString();
            String what = percent + " % on parts, to the cent";
            lines.add(new DraftLine(Kind.ALLOWANCE, what, null, null, allowance));
        }
        if (coreCharge.signum() != 0) {
            lines.add(
                    new DraftLine(
                            Kind.CORE_CHARGE,
                            "what the terms charge for its cores",
                            null,
                            null,
                            cents(coreCharge)));
        }
        return lines;
    }

    private Optional<Operation> operation(List<String> lacks) {
        Map<String, String> asked = new TreeMap<>(attributes);
        Outcome outcome = Objects.requireNonNull(job.outcome());
        asked.put(OUTCOME, outcome.word());
        List<Operation> may =
                terms.operations().stream().filter(o -> o.when().on(asked) != Holds.NO).toList();
        if (may.isEmpty()) {
            lacks.add("no labour operation of the terms is for this vehicle and outcome");
            return Optional.empty();
        }
        if (may.get(0).when().on(asked) == Holds.UNKNOWN) {
            lacks.add(
                    "the vehicle's row does not say which labour operation is for it: complete it"
                            + " in vehicles");
            return Optional.empty();
        }
        return Optional.of(may.get(0));
    }

    private BigDecimal withAllowance(BigDecimal amount) {
        return amount.multiply(HUNDRED.add(terms.partsAllowancePercent())).divide(HUNDRED);
    }

    private BigDecimal cents(BigDecimal amount) {
        int digits = Math.max(site.currency().getDefaultFractionDigits(), 0);
        return amount.setScale(digits, RoundingMode.HALF_EVEN);
    }

    private Optional<String> replaced() {
        return before.stream().max(Claim.ORDER).map(Claim::claim);
    }
}
