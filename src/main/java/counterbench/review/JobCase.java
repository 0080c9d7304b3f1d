package counterbench.review;

import counterbench.campaign.Pack;
import counterbench.campaign.Vehicle;
import counterbench.claims.Credit;
import counterbench.claims.matching.Candidate;
import counterbench.claims.matching.CreditedCore;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.job.Job;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** One job's file beside the terms that it is judged by. */
public record JobCase(Site site, Terms terms, Instant asOf, JobFile file) {
    /** The revision in force on the day of completion; for a job that goes on, today. */
    public Optional<Pack> pack() {
        return job().flatMap(j -> terms.packs().inForce(j.campaign(), site.dayOf(until(j))));
    }

    /** When a later revision's terms will hold for a job that goes on. */
    Optional<Instant> termsChangeAt() {
        return job().filter(j -> j.completedAt() == null)
                .flatMap(j -> terms.packs().nextAfter(j.campaign(), site.dayOf(asOf)))
                .map(next -> site.startOf(next.inForceFrom()));
    }

    private Instant until(Job job) {
        Instant completedAt = job.completedAt();
        return completedAt == null ? asOf : completedAt;
    }

    /** The job, if it counts yet. */
    public Optional<Job> job() {
        return Optional.ofNullable(file.job());
    }

    /** The vehicle's attributes; none for one that is not listed. */
    public Map<String, String> attributes() {
        Vehicle vehicle = file.vehicle();
        return vehicle == null ? Map.of() : vehicle.attributes();
    }

    /** The job's removed cores with all that is known of each. */
    public List<CoreHistory> cores() {
        Map<String, List<CoreEvent>> byTag = new TreeMap<>();
        file.cores().forEach(e -> byTag.computeIfAbsent(e.core(), c -> new ArrayList<>()).add(e));
        return byTag.entrySet().stream()
                .map(e -> new CoreHistory(e.getKey(), e.getValue(), file.acknowledgements()))
                .toList();
    }

    /** The names of the job's removed cores. */
    public List<Candidate.Core> coreNames() {
        return cores().stream()
                .map(core -> new Candidate.Core(core.core(), core.serial()))
                .toList();
    }

    /** The core credits of the job's claims that are for one of its cores. */
    public List<Credit> coreCredits(CoreHistory core) {
        List<Candidate.Core> names = coreNames();
        return file.credits().stream()
                .filter(credit -> credit.kind() == Credit.Kind.CORE)
                .filter(
                        credit ->
                                CreditedCore.of(credit, names)
                                        .filter(core.core()::equals)
                                        .isPresent())
                .toList();
    }

    /** Shipments for which a row of the return centre does not plainly fit the job's cores. */
    Set<String> doubtfulShipments(List<CoreHistory> cores) {
        Set<String> doubtful = new TreeSet<>();
        for (Acknowledgement row : file.acknowledgements()) {
            boolean ofShipment = row.core() == null && row.serial() == null;
            if (!ofShipment && cores.stream().noneMatch(core -> fits(row, core))) {
                doubtful.add(row.shipment());
            }
        }
        return doubtful;
    }

    private static boolean fits(Acknowledgement row, CoreHistory core) {
        boolean sameCore = row.core() == null || row.core().equals(core.core());
        boolean sameSerial = row.serial() == null || row.serial().equals(core.serial());
        return sameCore
                && sameSerial
                && core.placement().filter(p -> p.shipment().equals(row.shipment())).isPresent();
    }
}
