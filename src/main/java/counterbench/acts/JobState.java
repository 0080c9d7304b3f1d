package counterbench.acts;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.claims.Credit;
import counterbench.claims.matching.CreditedCore;
import counterbench.cores.CoreHistory;
import counterbench.job.Job;
import counterbench.job.OnVehicle;
import counterbench.job.Outcome;
import counterbench.job.Requirements;
import counterbench.review.Component;
import counterbench.review.JobCase;
import counterbench.review.JobFile;
import counterbench.review.Terms;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Issue;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.Source;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;

/** One job as it stands: its bench, its vehicle, its steps and its cores. */
public final class JobState {
    private final JobCase jobCase;
    private final Component component;
    private final Ledger ledger;
    private final Job job;

    JobState(
            Site site, Instant now, Terms terms, Component component, Ledger ledger, JobFile file) {
        this.jobCase = new JobCase(site, terms, now, file);
        this.component = component;
        this.ledger = ledger;
        this.job = Objects.requireNonNull(file.job());
    }

    /** Every job of a component that counts. */
    public static List<JobState> allOf(Site site, Instant now, Terms terms, Component component) {
        Ledger ledger = Ledger.of(component.facts());
        return component.jobs().stream()
                .filter(file -> file.job() != null)
                .map(file -> new JobState(site, now, terms, component, ledger, file))
                .toList();
    }

    /** The job. */
    public Job job() {
        return job;
    }

    /** Its name. */
    public String name() {
        return job.job();
    }

    /** Everything that was recorded about it. */
    public JobFile file() {
        return jobCase.file();
    }

    /** The job's component, with the kits that it names and the jobs that name them, too. */
    public Component component() {
        return component;
    }

    /** All moves of its component, in order of time. */
    public List<Move> moves() {
        return ledger.moves();
    }

    /** The site. */
    public Site site() {
        return jobCase.site();
    }

    /** The moment as of which it stands so. */
    public Instant now() {
        return jobCase.asOf();
    }

    /** What holds for all jobs of the site. */
    public Terms terms() {
        return jobCase.terms();
    }

    /** The revision in force for it, where a pack of its campaign is loaded. */
    public Optional<Pack> pack() {
        return jobCase.pack();
    }

    /** The vehicle's attributes; none where it is not listed. */
    public Map<String, String> attributes() {
        return jobCase.attributes();
    }

    /** What its pack requires on its vehicle. */
    public Optional<Requirements> requirements() {
        return pack().map(pack -> Requirements.of(pack, attributes()));
    }

    /** The steps that apply to its vehicle, in the order of the pack. */
    public List<Step> steps() {
        return pack().stream()
                .flatMap(pack -> pack.procedure().stream())
                .filter(step -> step.when().on(attributes()) == Holds.YES)
                .toList();
    }

    /** Its cores, by tag. */
    public List<CoreHistory> cores() {
        return jobCase.cores();
    }

    /** The core that a core credit of one of its claims is for, if that can be told. */
    public Optional<String> creditedCore(Credit credit) {
        return CreditedCore.of(credit, jobCase.coreNames());
    }

    /** The core credits of its claims that are for one of its cores. */
    public List<Credit> coreCredits(CoreHistory core) {
        return jobCase.coreCredits(core);
    }

    /** Serials of the kits that were issued to it, in order of time. */
    public List<String> kits() {
        return file().issues().stream()
                .map(Issue::kit)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** What lies on its bench of each part, without the zeros. */
    public SortedMap<String, Quantity> onBench() {
        return ledger.balance(Account.bench(name()));
    }

    /** What lies on its bench, by part and source, in order of arrival. */
    public List<Holding> benchHoldings() {
        return Holding.in(Account.bench(name()), ledger.moves());
    }

    /** How much of a part could be taken from its bench at a time. */
    public Quantity freeOnBench(String part, Instant at) {
        return Holding.free(
                Account.bench(name()), ledger.moves(), at, move -> move.part().equals(part));
    }

    /** How much of a part from one source could be taken from its bench at a time. */
    public Quantity freeOnBench(String part, Source source, Instant at) {
        return Holding.free(
                Account.bench(name()),
                ledger.moves(),
                at,
                move -> move.part().equals(part) && move.source().equals(source));
    }

    /** What is on its vehicle now, parts by their own numbers. */
    public OnVehicle onVehicle(Instant now) {
        return OnVehicle.at(now, file().uses(), part -> part);
    }

    /**
     * Refuses what cannot be done on a job that has ended.
     *
     * @param asked what was asked, as the refusal begins
     */
    public void mustBeOpen(String asked) {
        Outcome outcome = job.outcome();
        if (outcome != null) {
            throw new Refused(
                    asked,
                    "job " + name() + " was " + ended(outcome),
                    "if that is wrong, reverse its completion (journal show), or import the paper"
                            + " of what was done before it");
        }
    }

    private static String ended(Outcome outcome) {
        return switch (outcome) {
            case COMPLETED -> "completed";
            case NOT_NEEDED -> "closed as not needed";
            case ABANDONED -> "abandoned";
        };
    }
}
