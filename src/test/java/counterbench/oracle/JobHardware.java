package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What one job's terms require and what is on the vehicle at its completion, by counted part. */
final class JobHardware {

    final Facts.Job job;
    final Pack pack;
    final Map<String, String> vehicle;
    final Map<String, BigDecimal> fittedNew = new LinkedHashMap<>();
    final Map<String, BigDecimal> refittedOld = new LinkedHashMap<>();
    private final Map<String, List<String>> kitsOfNew = new LinkedHashMap<>();
    private final World world;

    JobHardware(World world, Facts.Job job) {
        this.world = world;
        this.job = job;
        this.pack = world.terms(job);
        this.vehicle = world.attributes(job);
        Instant end = job.endedAt().orElse(world.asOf);
        world.usesOfJob.getOrDefault(job.job(), List.of()).stream()
                .filter(u -> !u.at().isAfter(end))
                .forEach(this::read);
    }

    private void read(Facts.Use use) {
        String part = pack.counted(use.part());
        switch (use.condition()) {
            case "new" -> {
                fittedNew.merge(part, use.quantity(), BigDecimal::add);
                kitsOfNew.computeIfAbsent(part, p -> new ArrayList<>()).add(world.kitOf(use));
            }
            case "reused" -> refittedOld.merge(part, use.quantity(), BigDecimal::add);
            case "taken-off" -> takeOff(use, part);
            default -> {}
        }
    }

    private void takeOff(Facts.Use use, String part) {
        if (!use.was().equals("new")) {
            refittedOld.merge(part, use.quantity().negate(), BigDecimal::add);
            return;
        }
        fittedNew.merge(part, use.quantity().negate(), BigDecimal::add);
        takeOffKit(part, world.kitOf(use));
    }

    /** The fitting that is undone is the latest from the same kit, else the latest of all. */
    private void takeOffKit(String part, String kit) {
        List<String> kits = kitsOfNew.getOrDefault(part, new ArrayList<>());
        int same = kits.lastIndexOf(kit);
        if (!kits.isEmpty()) {
            kits.remove(same < 0 ? kits.size() - 1 : same);
        }
    }

    /** The kits that gave the matched part new; an empty serial stands for no kit. */
    Set<String> kitsThatGave(String part) {
        return new TreeSet<>(kitsOfNew.getOrDefault(pack.counted(part), List.of()));
    }

    When.Applies applies(Pack.KitItem kit, Pack.Content line) {
        return kit.when().holds(vehicle).and(line.when().holds(vehicle));
    }

    /** Whether all lines of the part can be told to apply or not. */
    boolean decided(String part) {
        return pack.kits().stream()
                .noneMatch(
                        k ->
                                k.contents().stream()
                                        .filter(c -> pack.counted(c.part()).equals(part))
                                        .anyMatch(c -> applies(k, c) == When.Applies.UNKNOWN));
    }

    BigDecimal required(String part) {
        return sum(part, false);
    }

    BigDecimal atLeast(String part) {
        return sum(part, true);
    }

    private BigDecimal sum(String part, boolean atLeast) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Pack.KitItem kit : pack.kits()) {
            for (Pack.Content line : kit.contents()) {
                boolean counts = pack.counted(line.part()).equals(part) && !line.onCore();
                if (counts && applies(kit, line) == When.Applies.YES) {
                    BigDecimal each = atLeast ? line.atLeast() : line.quantity().number();
                    sum = sum.add(each.multiply(kit.quantity()));
                }
            }
        }
        return sum;
    }

    /** Counted parts that the terms name or that were fitted. */
    Set<String> parts() {
        Set<String> parts = new TreeSet<>();
        pack.parts().forEach(p -> parts.add(pack.counted(p)));
        parts.addAll(fittedNew.keySet());
        parts.addAll(refittedOld.keySet());
        return parts;
    }

    BigDecimal fittedNew(String part) {
        return fittedNew.getOrDefault(part, BigDecimal.ZERO);
    }

    BigDecimal refittedOld(String part) {
        return refittedOld.getOrDefault(part, BigDecimal.ZERO);
    }

    BigDecimal onVehicle(String part) {
        return fittedNew(part).add(refittedOld(part));
    }
}
