package counterbench.claims;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Condition;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One claim of the invented garage, CL-1 for job J-1, and what bears on it. */
public final class ClaimStory {
    public static final Site SITE =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);

    private final Claim claim;
    private final List<Claim> others = new ArrayList<>();
    private final List<Credit> credits = new ArrayList<>();
    private @Nullable Job job = job(at("2026-03-05T16:00"), Outcome.COMPLETED);
    private @Nullable ClaimTerms terms = terms(60, ClaimTerms.Needs.NONE);
    private boolean needsMet = true;
    private Instant asOf = at("2026-12-31T12:00");

    private ClaimStory(Claim claim) {
        this.claim = claim;
    }

    public static ClaimStory of(Claim claim) {
        return new ClaimStory(claim);
    }

    public static ClaimStory submitted(String day) {
        return of(claim("CL-1", 5, day));
    }

    public static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(SITE.zone()).toInstant();
    }

    /** A claim for J-1 without amounts, in that row. */
    public static Claim claim(String name, int row, String day) {
        return new ClaimSketch(name, row, day).claim();
    }

    public static ClaimTerms terms(@Nullable Integer days, ClaimTerms.Needs needs) {
        return new ClaimTerms(List.of(), BigDecimal.ZERO, days, needs);
    }

    /** Terms that pay for a look at a vehicle that turns out not to need the work, too. */
    public static ClaimTerms termsForALook(@Nullable Integer days, ClaimTerms.Needs needs) {
        Condition notNeeded = new Condition(Map.of("outcome", "not-needed"));
        return new ClaimTerms(
                List.of(new ClaimTerms.Operation("52-199", new BigDecimal("0.5"), notNeeded)),
                BigDecimal.ZERO,
                days,
                needs);
    }

    public static Job job(@Nullable Instant endedAt, @Nullable Outcome outcome) {
        return new Job(
                1,
                "J-1",
                "QM-26-014",
                "00000000000000001",
                at("2026-03-05T08:00"),
                null,
                null,
                endedAt,
                outcome,
                null,
                null);
    }

    public static Credit credit(Credit.Kind kind, String amount) {
        return new Credit(
                "R-1",
                "7",
                new BigDecimal(amount),
                LocalDate.parse("2026-04-30"),
                "CL-1",
                null,
                null,
                null,
                kind);
    }

    public ClaimStory in(@Nullable Job itsJob) {
        job = itsJob;
        return this;
    }

    public ClaimStory under(@Nullable ClaimTerms itsTerms) {
        terms = itsTerms;
        return this;
    }

    public ClaimStory needsMet(boolean met) {
        needsMet = met;
        return this;
    }

    public ClaimStory beside(Claim... otherClaims) {
        others.addAll(List.of(otherClaims));
        return this;
    }

    public ClaimStory credited(Credit.Kind kind, String amount) {
        credits.add(credit(kind, amount));
        return this;
    }

    public ClaimStory asOf(Instant clock) {
        asOf = clock;
        return this;
    }

    public ClaimStory asOf(String clock) {
        return asOf(at(clock));
    }

    public List<Finding> judgedBy(Judge<ClaimFacts> judge) {
        return judging(judge).found();
    }

    public Optional<Instant> changesBy(Judge<ClaimFacts> judge) {
        return judging(judge).changesAt();
    }

    private Findings judging(Judge<ClaimFacts> judge) {
        Findings findings = new Findings();
        judge.judge(
                new ClaimFacts(SITE, claim, job, others, terms, needsMet, credits, asOf), findings);
        return findings;
    }
}
