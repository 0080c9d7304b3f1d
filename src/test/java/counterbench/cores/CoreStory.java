package counterbench.cores;

import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreEvent.Kind;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One core of the invented garage, told fact by fact. Times are the site's own, such as {@code
 * 2026-03-05T09:00}; facts get their row in the order of telling.
 */
public final class CoreStory {
    /** A site whose clocks change on 2026-03-08 and 2026-11-01. */
    public static final Site SITE =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);

    private final String core;
    private final List<CoreEvent> events = new ArrayList<>();
    private final List<Acknowledgement> acknowledgements = new ArrayList<>();
    private final List<String> sameSerial = new ArrayList<>();
    private @Nullable Job job = openJob();
    private @Nullable CoreTerms terms = terms("12", 5, "replacement", 30);
    private Instant asOf = at("2026-12-31T12:00");
    private int row;

    private CoreStory(String core) {
        this.core = core;
    }

    /** A core of that tag of which nothing is told yet. */
    public static CoreStory untold(String core) {
        return new CoreStory(core);
    }

    /** Core C-1 with serial S-1, removed in job J-1. */
    public static CoreStory removed() {
        return untold("C-1").removed("J-1", "S-1", null, "2026-03-05T09:00");
    }

    public static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(SITE.zone()).toInstant();
    }

    public static CoreTerms terms(
            String minutes, int plugs, @Nullable String packaging, @Nullable Integer days) {
        return new CoreTerms(
                "QM-4471",
                1,
                Condition.ALWAYS,
                new BigDecimal(minutes),
                plugs,
                packaging,
                days,
                new BigDecimal("480.00"));
    }

    public static Job openJob() {
        return job(null, null);
    }

    public static Job completedJob(String at) {
        return job(at(at), Outcome.COMPLETED);
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

    public CoreStory removed(
            String inJob, @Nullable String serial, @Nullable String part, String at) {
        return add(Kind.REMOVED, at(at), inJob, serial, part, null, null, null, null);
    }

    public CoreStory drained(String from, String to) {
        return tell(Kind.DRAIN_BEGUN, from).tell(Kind.DRAIN_ENDED, to);
    }

    public CoreStory plugged(int plugs, String at) {
        return add(Kind.PLUGGED, at(at), null, null, null, plugs, null, null, null);
    }

    public CoreStory unplugged(int plugs, String at) {
        return add(Kind.UNPLUGGED, at(at), null, null, null, plugs, null, null, null);
    }

    public CoreStory packed(@Nullable String packaging, String at) {
        return add(Kind.PACKED, at(at), null, null, null, null, packaging, null, null);
    }

    public CoreStory tell(Kind kind, String at) {
        return tell(kind, at(at));
    }

    public CoreStory tell(Kind kind, Instant at) {
        return add(kind, at, null, null, null, null, null, null, null);
    }

    /** A fact that stands at an address of its own, wherever it is told. */
    public CoreStory tellAs(Address address, Kind kind, Instant at) {
        events.add(CoreEvent.of(address, core, kind, at));
        return this;
    }

    /** Added to, taken off or shipped with a shipment. */
    public CoreStory shipment(Kind kind, @Nullable String shipment, String at) {
        return add(kind, at(at), null, null, null, null, null, shipment, null);
    }

    public CoreStory rejected(@Nullable String reason, String at) {
        return add(Kind.REJECTED, at(at), null, null, null, null, null, null, reason);
    }

    /** Sent to, or arrived at, another site. */
    public CoreStory moved(Kind kind, String site, String at) {
        events.add(
                new CoreEvent(
                        new Address(1, ++row),
                        core,
                        kind,
                        at(at),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        site));
        return this;
    }

    /** A row of the return centre. */
    public CoreStory answered(
            String shipment,
            Kind kind,
            @Nullable String named,
            @Nullable String serial,
            String at) {
        acknowledgements.add(
                new Acknowledgement(
                        new Address(2, ++row), shipment, at(at), kind, named, serial, null));
        return this;
    }

    public CoreStory in(@Nullable Job itsJob) {
        job = itsJob;
        return this;
    }

    public CoreStory under(@Nullable CoreTerms itsTerms) {
        terms = itsTerms;
        return this;
    }

    public CoreStory alsoBearsItsSerial(String... tags) {
        sameSerial.addAll(List.of(tags));
        return this;
    }

    public CoreStory asOf(Instant clock) {
        asOf = clock;
        return this;
    }

    public CoreStory asOf(String clock) {
        return asOf(at(clock));
    }

    public CoreHistory history() {
        return new CoreHistory(core, events, acknowledgements);
    }

    public CoreFacts facts() {
        return new CoreFacts(SITE, history(), job, terms, sameSerial, asOf);
    }

    /** What one rule finds. */
    public List<Finding> judgedBy(Judge<CoreFacts> judge) {
        return judging(judge).found();
    }

    /** When one rule's outcome changes by the clock. */
    public Optional<Instant> changesBy(Judge<CoreFacts> judge) {
        return judging(judge).changesAt();
    }

    private Findings judging(Judge<CoreFacts> judge) {
        Findings findings = new Findings();
        judge.judge(facts(), findings);
        return findings;
    }

    private CoreStory add(
            Kind kind,
            Instant at,
            @Nullable String inJob,
            @Nullable String serial,
            @Nullable String part,
            @Nullable Integer quantity,
            @Nullable String packaging,
            @Nullable String shipment,
            @Nullable String reason) {
        events.add(
                new CoreEvent(
                        new Address(1, ++row),
                        core,
                        kind,
                        at,
                        inJob,
                        serial,
                        part,
                        quantity,
                        packaging,
                        shipment,
                        reason,
                        null));
        return this;
    }
}
