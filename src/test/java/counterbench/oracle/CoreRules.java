package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Rules about cores and shipments. */
final class CoreRules {

    private final World world;
    private final CoreTerms terms;
    private final List<Finding> found = new ArrayList<>();

    CoreRules(World world) {
        this.world = world;
        this.terms = new CoreTerms(world);
    }

    List<Finding> judge() {
        world.facts.jobs.values().stream().filter(Facts.Job::completed).forEach(this::missing);
        for (Core core : world.cores.values()) {
            terms.of(core).ifPresent(item -> judge(core, item));
            unacknowledged(core);
            rejected(core);
        }
        serialTwice();
        new ShipmentLists(world).strays().forEach(this::stray);
        return found;
    }

    private void missing(Facts.Job job) {
        BigDecimal wanted = terms.wanted(job);
        int removed = terms.judgedCores(job).size();
        if (BigDecimal.valueOf(removed).compareTo(wanted) < 0) {
            found.add(world.ofJob("core-missing", job, "", "", removed + " of " + wanted));
        }
    }

    private void judge(Core core, Pack.CoreItem item) {
        if (core.packedShippedOrAcknowledged()) {
            drain(core, item);
            plugs(core, item);
        }
        packaging(core, item);
        if (job(core).completed()) {
            overdue(core, item);
        }
    }

    private void drain(Core core, Pack.CoreItem item) {
        Optional<Duration> longest = DrainPeriods.longest(core);
        if (longest.isEmpty()) {
            add("drain-not-logged", core, "");
            return;
        }
        BigDecimal needed = item.drainMinutes().multiply(new BigDecimal("60"));
        BigDecimal seconds = BigDecimal.valueOf(longest.get().toNanos(), 9);
        if (seconds.compareTo(needed) < 0) {
            add("drain-short", core, seconds + " s of " + needed);
        }
    }

    private void plugs(Core core, Pack.CoreItem item) {
        BigDecimal plugs = sum(core.of("plugged")).subtract(sum(core.of("unplugged")));
        if (plugs.compareTo(item.plugs()) < 0) {
            add("plugs-short", core, plugs + " of " + item.plugs());
        }
    }

    private void packaging(Core core, Pack.CoreItem item) {
        List<Facts.CoreEvent> packed = core.of("packed");
        if (!packed.isEmpty() && !item.packaging().isEmpty()) {
            String last = packed.get(packed.size() - 1).packaging();
            if (!last.equals(item.packaging())) {
                add("core-packaging", core, last);
            }
        }
    }

    private void overdue(Core core, Pack.CoreItem item) {
        Instant completed = job(core).endedAt().orElseThrow();
        Instant due = world.clock.end(world.clock.day(completed).plusDays(item.returnWithinDays()));
        boolean inTime = core.first("shipped").map(t -> t.isBefore(due)).orElse(false);
        if (!inTime && !world.asOf.isBefore(due)) {
            add("core-overdue", core, "due " + due);
        }
    }

    private void unacknowledged(Core core) {
        Optional<Instant> patienceEnds =
                core.first("shipped")
                        .map(world.clock::day)
                        .map(d -> world.clock.end(d.plusDays(world.site.acknowledgeDays())));
        boolean over = patienceEnds.map(t -> !world.asOf.isBefore(t)).orElse(false);
        if (over && core.firstAnswer().isEmpty()) {
            add("core-unacknowledged", core, "");
        }
    }

    private void rejected(Core core) {
        core.answers.stream()
                .filter(a -> !a.event().equals("received"))
                .max(Comparator.comparing(Core.Answer::at).thenComparing(Core.Answer::line))
                .filter(a -> a.event().equals("rejected"))
                .ifPresent(a -> add("core-rejected", core, a.toString()));
    }

    private void serialTwice() {
        Map<String, List<Core>> bySerial =
                world.cores.values().stream()
                        .filter(c -> !c.serial.isEmpty())
                        .collect(Collectors.groupingBy(c -> c.serial));
        bySerial.values().stream()
                .filter(cores -> cores.size() > 1)
                .flatMap(List::stream)
                .forEach(c -> add("core-serial-twice", c, c.serial));
    }

    private void stray(String shipment) {
        found.add(world.finding("acknowledgement-stray", "", "shipment", shipment, "", "", "", ""));
    }

    private Facts.Job job(Core core) {
        return world.facts.jobs.get(core.job);
    }

    private static BigDecimal sum(List<Facts.CoreEvent> events) {
        return events.stream()
                .map(Facts.CoreEvent::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void add(String rule, Core core, String why) {
        Facts.Job job = job(core);
        found.add(
                world.finding(
                        rule, job.campaign(), "core", core.tag, "", "", world.month(job), why));
    }
}
