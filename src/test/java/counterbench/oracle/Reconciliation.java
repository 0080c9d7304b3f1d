package counterbench.oracle;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Both tables for a campaign and month. */
final class Reconciliation {

    private static final Set<String> SUSPECT =
            Set.of("reused-hardware", "hardware-short", "hardware-over", "left-on-bench");

    private final World world;
    private final Bookkeeper books;
    private final List<Finding> findings;
    private final String campaign;
    private final YearMonth month;

    Reconciliation(
            World world,
            Bookkeeper books,
            List<Finding> findings,
            String campaign,
            YearMonth month) {
        this.world = world;
        this.books = books;
        this.findings = findings;
        this.campaign = campaign;
        this.month = month;
    }

    List<ConsumptionRow> consumption() {
        List<JobHardware> jobs =
                world.facts.jobs.values().stream()
                        .filter(j -> j.completed() && j.campaign().equals(campaign))
                        .filter(j -> world.month(j).equals(month.toString()))
                        .map(j -> new JobHardware(world, j))
                        .toList();
        Map<String, Sum> sums = new TreeMap<>();
        for (JobHardware job : jobs) {
            job.parts().forEach(p -> sum(sums, p).add(job, p));
            books.ledger
                    .held(Bookkeeper.bench(job.job.job()))
                    .forEach((p, q) -> sum(sums, job.pack.counted(p)).left(q));
        }
        scrappedOn(jobs).forEach((p, q) -> sum(sums, p).scrapped = q);
        world.packs.parts(campaign).forEach(p -> sum(sums, p));
        Map<String, Set<String>> behind = behind(jobs);
        return sums.entrySet().stream()
                .map(e -> e.getValue().row(e.getKey(), jobs.size(), behind))
                .toList();
    }

    private static Sum sum(Map<String, Sum> sums, String part) {
        return sums.computeIfAbsent(part, p -> new Sum());
    }

    /** What went from these jobs' benches and vehicles to scrap, by counted part. */
    private Map<String, BigDecimal> scrappedOn(List<JobHardware> jobs) {
        Map<String, Pack> packs = new TreeMap<>();
        for (JobHardware job : jobs) {
            packs.put(Bookkeeper.bench(job.job.job()), job.pack);
            packs.put("VEHICLE(" + job.job.job() + ")", job.pack);
        }
        Map<String, BigDecimal> scrapped = new TreeMap<>();
        for (Ledger.Move move : books.ledger.moves) {
            if (move.to().equals("SCRAP") && packs.containsKey(move.from())) {
                String part = packs.get(move.from()).counted(move.part());
                scrapped.merge(part, move.quantity(), BigDecimal::add);
            }
        }
        return scrapped;
    }

    private Map<String, Set<String>> behind(List<JobHardware> jobs) {
        Map<String, Pack> packs =
                jobs.stream().collect(Collectors.toMap(j -> j.job.job(), j -> j.pack));
        Map<String, Set<String>> behind = new TreeMap<>();
        for (Finding finding : findings) {
            if (SUSPECT.contains(finding.rule()) && packs.containsKey(finding.subject())) {
                String part = packs.get(finding.subject()).counted(finding.part());
                behind.computeIfAbsent(part, p -> new TreeSet<>()).add(finding.subject());
            }
        }
        return behind;
    }

    List<GoodsRow> goods() {
        Map<String, Flow> flows = new TreeMap<>();
        world.packs.parts(campaign).forEach(p -> flows.put(p, new Flow()));
        for (Ledger.Move move : books.ledger.moves) {
            Flow flow = flows.get(move.part());
            YearMonth booked = world.clock.month(move.at());
            if (flow != null && booked.isBefore(month)) {
                flow.before(move);
            } else if (flow != null && booked.equals(month)) {
                flow.during(move);
            }
        }
        return flows.entrySet().stream()
                .map(e -> e.getValue().row(e.getKey(), counted(e.getKey())))
                .toList();
    }

    private Optional<BigDecimal> counted(String part) {
        return Optional.ofNullable(
                books.lastStoreCount.get(new Bookkeeper.Noted(month.toString(), part)));
    }

    private static final class Sum {
        private BigDecimal required = BigDecimal.ZERO;
        private BigDecimal fittedNew = BigDecimal.ZERO;
        private BigDecimal refittedOld = BigDecimal.ZERO;
        private BigDecimal scrapped = BigDecimal.ZERO;
        private BigDecimal left = BigDecimal.ZERO;

        void add(JobHardware job, String part) {
            required = required.add(job.required(part));
            fittedNew = fittedNew.add(job.fittedNew(part));
            refittedOld = refittedOld.add(job.refittedOld(part));
        }

        void left(BigDecimal quantity) {
            left = left.add(quantity);
        }

        ConsumptionRow row(String part, int jobs, Map<String, Set<String>> behind) {
            return new ConsumptionRow(
                    part,
                    jobs,
                    required,
                    fittedNew,
                    refittedOld,
                    scrapped,
                    left,
                    fittedNew.add(refittedOld).subtract(required),
                    behind.getOrDefault(part, Set.of()));
        }
    }
}
