package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Rules about the hardware of one job, from reused-hardware to job-idle. */
final class HardwareRules {

    private final World world;
    private final Ledger ledger;
    private final List<Finding> found = new ArrayList<>();

    HardwareRules(World world, Ledger ledger) {
        this.world = world;
        this.ledger = ledger;
    }

    List<Finding> judge() {
        for (Facts.Job job : world.facts.jobs.values()) {
            if (job.completed()) {
                JobHardware hardware = new JobHardware(world, job);
                hardware.parts().forEach(part -> quantities(hardware, part));
                matched(hardware);
                expired(hardware);
                kits(job);
            }
            if (job.completed() || job.abandoned()) {
                bench(job);
            }
            idle(job);
        }
        return found;
    }

    private void quantities(JobHardware hardware, String part) {
        List<Pack.Content> lines = hardware.pack.lines(part);
        boolean singleUse = lines.stream().anyMatch(Pack.Content::singleUse);
        if (singleUse && hardware.refittedOld(part).signum() > 0) {
            add("reused-hardware", hardware.job, part, "old " + hardware.refittedOld(part));
        }
        if (hardware.pack.onlyOnCore(part) || !hardware.decided(part)) {
            return;
        }
        BigDecimal there = hardware.onVehicle(part);
        BigDecimal required = hardware.required(part);
        boolean measured = world.measured(part);
        if (there.compareTo(measured ? hardware.atLeast(part) : required) < 0) {
            add("hardware-short", hardware.job, part, there + " of " + required);
        }
        if (!measured && there.compareTo(required) > 0) {
            add("hardware-over", hardware.job, part, there + " for " + required);
        }
    }

    private void matched(JobHardware hardware) {
        for (Pack.KitItem kit : hardware.pack.kits()) {
            Set<Set<String>> givers =
                    kit.contents().stream()
                            .filter(Pack.Content::matched)
                            .filter(c -> hardware.applies(kit, c) == When.Applies.YES)
                            .map(c -> hardware.kitsThatGave(c.part()))
                            .filter(kits -> !kits.isEmpty())
                            .collect(Collectors.toSet());
            if (givers.size() > 1 || givers.stream().anyMatch(g -> g.contains(""))) {
                add("matched-set-split", hardware.job, "", givers.toString());
                return;
            }
        }
    }

    private void expired(JobHardware hardware) {
        Set<String> parts = new TreeSet<>();
        for (Facts.Use use : world.usesOfJob.getOrDefault(hardware.job.job(), List.of())) {
            boolean shelfLife =
                    hardware.pack.lines(use.part()).stream().anyMatch(Pack.Content::shelfLife);
            Optional<LocalDate> last = lastUsableDay(use);
            if (use.condition().equals("new")
                    && shelfLife
                    && last.isPresent()
                    && world.clock.day(use.at()).isAfter(last.get())) {
                parts.add(hardware.pack.counted(use.part()));
            }
        }
        parts.forEach(p -> add("expired-when-used", hardware.job, p, ""));
    }

    private Optional<LocalDate> lastUsableDay(Facts.Use use) {
        String kit = world.kitOf(use);
        if (!kit.isEmpty()) {
            return Optional.ofNullable(world.facts.kits.get(kit)).flatMap(Facts.Kit::expiresOn);
        }
        String lot = use.lot().isEmpty() ? onlyLotIssued(use) : use.lot();
        return world.facts.receipts.stream()
                .filter(r -> r.part().equals(use.part()) && r.lot().equals(lot) && !lot.isEmpty())
                .findFirst()
                .flatMap(Facts.Receipt::expiresOn);
    }

    private String onlyLotIssued(Facts.Use use) {
        Set<String> lots =
                world.issuesOfJob.getOrDefault(use.job(), List.of()).stream()
                        .filter(i -> i.part().equals(use.part()))
                        .map(Facts.Issue::lot)
                        .collect(Collectors.toSet());
        return lots.size() == 1 ? lots.iterator().next() : "";
    }

    private void kits(Facts.Job job) {
        Set<String> unknown = new TreeSet<>();
        Set<String> others = new TreeSet<>();
        for (Facts.Issue issue : world.issuesOfJob.getOrDefault(job.job(), List.of())) {
            if (!issue.kit().isEmpty() && !world.received.contains(issue.kit())) {
                unknown.add(issue.part());
            }
        }
        for (Facts.Use use : world.usesOfJob.getOrDefault(job.job(), List.of())) {
            if (!use.kit().isEmpty() && !world.received.contains(use.kit())) {
                unknown.add(use.part());
            } else if (!use.kit().isEmpty() && !world.kitsOf(job.job()).contains(use.kit())) {
                others.add(use.part());
            }
        }
        unknown.forEach(part -> add("kit-unknown", job, part, ""));
        others.forEach(part -> add("kit-of-another-job", job, part, ""));
    }

    private void bench(Facts.Job job) {
        for (Map.Entry<String, BigDecimal> left :
                ledger.held(Bookkeeper.bench(job.job())).entrySet()) {
            if (left.getValue().signum() != 0) {
                add("left-on-bench", job, left.getKey(), left.getValue().toPlainString());
            }
        }
    }

    private void idle(Facts.Job job) {
        Instant patienceEnds =
                world.clock.end(world.clock.day(job.openedAt()).plusDays(world.site.idleDays()));
        if (job.endedAt().isEmpty() && !world.asOf.isBefore(patienceEnds)) {
            add("job-idle", job, "", "opened " + job.openedAt());
        }
    }

    private void add(String rule, Facts.Job job, String part, String why) {
        found.add(world.ofJob(rule, job, part, "", why));
    }
}
