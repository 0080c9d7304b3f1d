package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The facts with everything that rules look up in them. */
final class World {

    final OracleSite site;
    final SiteClock clock;
    final Instant asOf;
    final Packs packs;
    final Facts facts;
    final Map<String, List<Facts.Use>> usesOfJob;
    final Map<String, List<Facts.Issue>> issuesOfJob;
    final Map<String, List<Facts.Mark>> marksOfJob;
    final Map<String, Core> cores = new LinkedHashMap<>();
    final Map<String, List<Core>> coresOfJob;
    final Map<String, Map<String, BigDecimal>> contentsOfKit = new LinkedHashMap<>();
    private final Map<String, Set<String>> measuredOrNot = new LinkedHashMap<>();
    final Set<String> received = new LinkedHashSet<>();

    World(OracleSite site, Instant asOf, Packs packs, Facts facts) {
        this.site = site;
        this.clock = site.clock();
        this.asOf = asOf;
        this.packs = packs;
        this.facts = facts;
        usesOfJob = by(facts.uses, Facts.Use::job);
        issuesOfJob = by(facts.issues, Facts.Issue::job);
        marksOfJob = by(facts.marks, Facts.Mark::job);
        by(facts.coreEvents, Facts.CoreEvent::core)
                .forEach((tag, events) -> cores.put(tag, new Core(tag, events)));
        coresOfJob = by(List.copyOf(cores.values()), Core::job);
        new ShipmentLists(this).acknowledge();
        kits();
    }

    LocalDate today() {
        return clock.day(asOf);
    }

    boolean measured(String part) {
        Set<String> answer =
                measuredOrNot.computeIfAbsent(
                        part,
                        p -> {
                            String unit = facts.partUnits.getOrDefault(p, "each");
                            boolean yes = packs.measured(p) || !unit.equals("each");
                            return yes ? Set.of("yes") : Set.of();
                        });
        return !answer.isEmpty();
    }

    /** Kits issued to the job at any time. */
    Set<String> kitsOf(String job) {
        return issuesOfJob.getOrDefault(job, List.of()).stream()
                .map(Facts.Issue::kit)
                .filter(k -> !k.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * The kit that a use takes from: the one it names, else the job's only kit that holds the part.
     */
    String kitOf(Facts.Use use) {
        if (!use.kit().isEmpty() || use.condition().equals("reused")) {
            return use.kit();
        }
        List<String> holding =
                kitsOf(use.job()).stream()
                        .filter(
                                k ->
                                        contentsOfKit
                                                .getOrDefault(k, Map.of())
                                                .containsKey(use.part()))
                        .toList();
        return holding.size() == 1 ? holding.get(0) : "";
    }

    Map<String, String> attributes(Facts.Job job) {
        return facts.vehicles
                .getOrDefault(job.campaign(), Map.of())
                .getOrDefault(job.vin(), Map.of());
    }

    /** The terms that judge a job: of the day it ended, or of today while it is open. */
    Pack terms(Facts.Job job) {
        return packs.inForce(job.campaign(), clock.day(job.endedAt().orElse(asOf)));
    }

    String month(Facts.Job job) {
        return job.endedAt().map(t -> clock.month(t).toString()).orElse("");
    }

    Finding finding(
            String rule,
            String campaign,
            String kind,
            String subject,
            String part,
            String step,
            String month,
            String why) {
        String severity = Finding.SEVERITIES.get(rule);
        return new Finding(
                rule, severity, site.name(), campaign, kind, subject, part, step, month, why);
    }

    Finding ofJob(String rule, Facts.Job job, String part, String step, String why) {
        return finding(rule, job.campaign(), "job", job.job(), part, step, month(job), why);
    }

    private void kits() {
        for (Facts.Kit kit : facts.kits.values()) {
            received.add(kit.kit());
            Map<String, BigDecimal> contents = new LinkedHashMap<>();
            packs.contents(kit.kitPart(), kit.revision(), clock.day(kit.at()))
                    .forEach((part, q) -> contents.put(part, less(q, kit.missing().get(part))));
            contents.values().removeIf(q -> q.signum() <= 0);
            contentsOfKit.put(kit.kit(), contents);
        }
        for (Facts.Movement move : facts.movements) {
            if (move.event().equals("arrived") && !move.kit().isEmpty()) {
                received.add(move.kit());
                Map<String, BigDecimal> held =
                        contentsOfKit.computeIfAbsent(move.kit(), k -> new LinkedHashMap<>());
                move.quantity().ifPresent(q -> held.merge(move.part(), q, BigDecimal::max));
            }
        }
    }

    private static BigDecimal less(BigDecimal quantity, BigDecimal missing) {
        return missing == null ? quantity : quantity.subtract(missing);
    }

    private static <T> Map<String, List<T>> by(List<T> facts, Function<T, String> key) {
        return facts.stream()
                .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }
}
