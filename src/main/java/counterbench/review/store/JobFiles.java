package counterbench.review.store;

import counterbench.campaign.Vehicle;
import counterbench.claims.Credit;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.job.Job;
import counterbench.journal.store.FactTable;
import counterbench.review.Component;
import counterbench.review.Horizon;
import counterbench.review.JobFile;
import counterbench.review.SameVehicle;
import counterbench.review.Terms;
import counterbench.shared.Address;
import counterbench.stock.Count;
import counterbench.stock.Issue;
import counterbench.stock.JobEnd;
import counterbench.stock.Kit;
import counterbench.stock.LedgerFacts;
import counterbench.stock.ReceivedKit;
import counterbench.stock.StockEvent;
import counterbench.stock.Use;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

/** Makes a job's file of its rows. */
final class JobFiles {
    private final Visible visible;
    private final FactReader reader;
    private final Horizon horizon;
    private final SiteFacts siteFacts;
    private final Set<String> measured;
    private final Map<String, List<SameVehicle>> sameVehicles;
    private final CreditMatches matches;

    JobFiles(
            Visible visible,
            FactReader reader,
            Horizon horizon,
            SiteFacts siteFacts,
            Terms terms,
            Map<String, List<SameVehicle>> sameVehicles,
            CreditMatches matches) {
        this.matches = matches;
        this.visible = visible;
        this.reader = reader;
        this.horizon = horizon;
        this.siteFacts = siteFacts;
        this.measured = terms.measuredParts();
        this.sameVehicles = sameVehicles;
    }

    /**
     * One job's share of its component.
     *
     * @param kits kits that the job names and the site received, by serial
     * @param named serials of all kits that it names
     * @param end the job's completion, if it was completed
     */
    record Part(
            JobFile file,
            Map<String, ReceivedKit> kits,
            Set<String> named,
            @Nullable JobEnd end,
            Optional<Instant> nextFact) {}

    /** What has been read of a job. */
    Part read(JobRows.Rows rows) {
        List<Keyed> jobs =
                Keyed.merge(FactTable.of(FactKind.JOBS), rows.of(FactKind.JOBS), visible);
        @Nullable Job job =
                jobs.stream()
                        .flatMap(k -> new JobReader(horizon).job(rows.jobNo(), k.row()).stream())
                        .findFirst()
                        .orElse(null);
        List<CoreEvent> cores = list(rows, FactKind.CORES, reader::core);
        List<Issue> issues = list(rows, FactKind.ISSUES, reader::issue);
        List<Use> uses = withOnlyCore(list(rows, FactKind.USES, reader::use), cores);
        JobFile file =
                new JobFile(
                        rows.jobNo(),
                        name(rows),
                        job,
                        issues,
                        uses,
                        list(rows, FactKind.MARKS, reader::mark),
                        cores,
                        acknowledgements(rows, cores),
                        new ClaimRows(reader, visible).claims(rows.of(FactKind.CLAIMS)),
                        credits(rows),
                        vehicle(rows),
                        job == null ? List.of() : sameVehicle(job));
        @Nullable JobEnd end = job == null ? null : end(job, jobs, rows);
        return new Part(file, kits(rows), named(issues, uses), end, horizon.takeNext());
    }

    /** The name stands in every row that names the job; rows of cores alone need not say it. */
    private static String name(JobRows.Rows rows) {
        for (FactKind kind :
                List.of(
                        FactKind.JOBS,
                        FactKind.ISSUES,
                        FactKind.USES,
                        FactKind.MARKS,
                        FactKind.CLAIMS,
                        FactKind.CORES)) {
            FactTable table = FactTable.of(kind);
            for (Record record : rows.of(kind)) {
                String job = record.get(table.text("job"));
                if (job != null) {
                    return job;
                }
            }
        }
        return "?";
    }

    private <T> List<T> list(
            JobRows.Rows rows, FactKind kind, BiFunction<Address, FactRow, Optional<T>> reading) {
        FactTable table = FactTable.of(kind);
        List<T> facts = new ArrayList<>();
        for (Record record : rows.of(kind)) {
            visible.address(table, record)
                    .flatMap(a -> reading.apply(a, table.row(record)))
                    .ifPresent(facts::add);
        }
        return facts;
    }

    private List<Acknowledgement> acknowledgements(JobRows.Rows rows, List<CoreEvent> cores) {
        List<Acknowledgement> all =
                new ArrayList<>(list(rows, FactKind.ACKNOWLEDGEMENTS, reader::acknowledgement));
        all.addAll(siteFacts.ofWholeShipments(cores));
        return all;
    }

    private List<Keyed> keyed(JobRows.Rows rows, FactKind kind) {
        return Keyed.merge(FactTable.of(kind), rows.of(kind), visible);
    }

    /**
     * Those that name a claim of the job and are not matched otherwise, and those matched to it.
     */
    private List<Credit> credits(JobRows.Rows rows) {
        List<Credit> credits = new ArrayList<>();
        read(rows.of(FactKind.CREDITS)).filter(c -> !matches.isMatched(c)).forEach(credits::add);
        FactTable claims = FactTable.of(FactKind.CLAIMS);
        Set<String> names =
                rows.of(FactKind.CLAIMS).stream()
                        .map(r -> r.get(claims.text("claim")))
                        .collect(Collectors.toSet());
        read(rows.of(FactKind.MATCHES)).forEach(c -> credits.addAll(matches.shares(c, names)));
        return credits;
    }

    private Stream<Credit> read(List<Record> rows) {
        return Keyed.merge(FactTable.of(FactKind.CREDITS), rows, visible).stream()
                .flatMap(k -> reader.credit(k.address(), k.row()).stream());
    }

    /** A plug goes on the job's only core where the row does not say which. */
    private static List<Use> withOnlyCore(List<Use> uses, List<CoreEvent> cores) {
        Set<String> tags =
                cores.stream()
                        .filter(c -> c.kind() == CoreEvent.Kind.REMOVED)
                        .map(CoreEvent::core)
                        .collect(Collectors.toSet());
        if (tags.size() != 1) {
            return uses;
        }
        String only = tags.iterator().next();
        return uses.stream()
                .map(
                        u ->
                                u.condition() == Use.Condition.ON_CORE && u.core() == null
                                        ? u.onCore(only)
                                        : u)
                .toList();
    }

    private Map<String, ReceivedKit> kits(JobRows.Rows rows) {
        Map<String, ReceivedKit> kits = new TreeMap<>();
        for (Keyed keyed : keyed(rows, FactKind.KITS)) {
            reader.kit(keyed.address(), keyed.row())
                    .ifPresent(kit -> kits.put(kit.kit(), siteFacts.received(kit)));
        }
        return kits;
    }

    private static Set<String> named(List<Issue> issues, List<Use> uses) {
        Set<String> named = new TreeSet<>();
        issues.stream().map(Issue::kit).filter(Objects::nonNull).forEach(named::add);
        uses.stream().map(Use::kit).filter(Objects::nonNull).forEach(named::add);
        return named;
    }

    private @Nullable Vehicle vehicle(JobRows.Rows rows) {
        return keyed(rows, FactKind.VEHICLES).stream()
                .map(k -> TermsReader.vehicle(k.row()))
                .findFirst()
                .orElse(null);
    }

    private List<SameVehicle> sameVehicle(Job job) {
        return sameVehicles.getOrDefault(
                TermsReader.vehicleKey(job.campaign(), Vehicle.compared(job.vin())), List.of());
    }

    private @Nullable JobEnd end(Job job, List<Keyed> jobs, JobRows.Rows rows) {
        Instant completedAt = job.completedAt();
        return job.isCompleted() && completedAt != null
                ? new JobEnd(
                        completion(rows).orElse(jobs.get(0).last()),
                        job.job(),
                        completedAt,
                        measured)
                : null;
    }

    /** The first row that says when the job was completed. */
    private Optional<Address> completion(JobRows.Rows rows) {
        FactTable table = FactTable.of(FactKind.JOBS);
        return rows.of(FactKind.JOBS).stream()
                .filter(r -> r.get(table.column("completed_at")) != null)
                .flatMap(r -> visible.address(table, r).stream())
                .min(Address::compareTo);
    }

    /** The component that the parts make. */
    Component join(List<Part> parts) {
        Map<String, ReceivedKit> kits = new TreeMap<>();
        Set<String> named = new TreeSet<>();
        parts.forEach(p -> kits.putAll(p.kits()));
        parts.forEach(p -> named.addAll(p.named()));
        return component(
                parts.stream().map(Part::file).toList(),
                kits,
                named,
                parts.stream().map(Part::end).filter(Objects::nonNull).toList(),
                parts.stream().flatMap(p -> p.nextFact().stream()).min(Instant::compareTo));
    }

    /** A component of a kit that no job names. */
    Component alone(String serial, @Nullable Kit kit) {
        Map<String, ReceivedKit> kits =
                kit == null ? Map.of() : Map.of(serial, siteFacts.received(kit));
        return component(List.of(), kits, Set.of(serial), List.of(), horizon.takeNext());
    }

    private Component component(
            List<JobFile> jobs,
            Map<String, ReceivedKit> kits,
            Set<String> named,
            List<JobEnd> ends,
            Optional<Instant> nextFact) {
        List<StockEvent> events =
                named.stream().flatMap(k -> siteFacts.eventsOf(k).stream()).toList();
        List<Count> counts = named.stream().flatMap(k -> siteFacts.countsOf(k).stream()).toList();
        List<ReceivedKit> arriving =
                named.stream()
                        .filter(k -> !kits.containsKey(k))
                        .flatMap(k -> siteFacts.arriving(k).stream())
                        .toList();
        LedgerFacts facts =
                new LedgerFacts(
                        List.copyOf(kits.values()),
                        arriving,
                        List.of(),
                        jobs.stream().flatMap(j -> j.issues().stream()).toList(),
                        jobs.stream().flatMap(j -> j.uses().stream()).toList(),
                        events,
                        counts,
                        ends);
        return new Component(jobs, List.copyOf(named), facts, nextFact);
    }
}
