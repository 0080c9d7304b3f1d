package counterbench.oracle;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which of a job's core terms judge which core. */
final class CoreTerms {

    private final World world;

    CoreTerms(World world) {
        this.world = world;
    }

    /** The first applicable item for the core's part; none where it cannot be told. */
    Optional<Pack.CoreItem> of(Core core) {
        Facts.Job job = world.facts.jobs.get(core.job);
        Map<String, String> vehicle = world.attributes(job);
        List<Pack.CoreItem> items = candidates(world.terms(job), core);
        Optional<Pack.CoreItem> applying = applying(items, vehicle);
        boolean unclear =
                items.stream().anyMatch(i -> i.when().holds(vehicle) == When.Applies.UNKNOWN);
        return unclear ? Optional.empty() : applying;
    }

    /** How many cores the terms surely want for the job. */
    BigDecimal wanted(Facts.Job job) {
        Map<String, String> vehicle = world.attributes(job);
        return world.terms(job).cores().stream()
                .filter(i -> i.when().holds(vehicle) == When.Applies.YES)
                .map(Pack.CoreItem::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    List<Core> judgedCores(Facts.Job job) {
        return world.coresOfJob.getOrDefault(job.job(), List.of()).stream()
                .filter(c -> of(c).isPresent())
                .toList();
    }

    private static List<Pack.CoreItem> candidates(Pack pack, Core core) {
        return pack.cores().stream()
                .filter(
                        i ->
                                core.part.isEmpty()
                                        || pack.counted(i.part()).equals(pack.counted(core.part)))
                .toList();
    }

    private static Optional<Pack.CoreItem> applying(
            List<Pack.CoreItem> items, Map<String, String> vehicle) {
        return items.stream().filter(i -> i.when().holds(vehicle) == When.Applies.YES).findFirst();
    }
}
