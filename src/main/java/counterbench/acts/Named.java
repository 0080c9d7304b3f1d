package counterbench.acts;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What an act names. Whatever of it is not known is left out of the {@link Situation}.
 *
 * @param jobs jobs
 * @param kits serials of kits, which bring the jobs that name them
 * @param parts parts of which it matters what lies loose in the store
 * @param cores core tags, which bring their jobs
 * @param shipments shipments, which bring the cores that were ever on them
 */
public record Named(
        Set<String> jobs,
        Set<String> kits,
        Set<String> parts,
        Set<String> cores,
        Set<String> shipments) {
    /** Nothing. */
    public static final Named NOTHING = new Named(Set.of(), Set.of(), Set.of(), Set.of());

    public Named {
        jobs = Set.copyOf(jobs);
        kits = Set.copyOf(kits);
        parts = Set.copyOf(parts);
        cores = Set.copyOf(cores);
        shipments = Set.copyOf(shipments);
    }

    /** Without shipments. */
    public Named(Set<String> jobs, Set<String> kits, Set<String> parts, Set<String> cores) {
        this(jobs, kits, parts, cores, Set.of());
    }

    /** A job. */
    public static Named job(String job) {
        return NOTHING.withJob(job);
    }

    /** The same and a job. */
    public Named withJob(String job) {
        return new Named(with(jobs, List.of(job)), kits, parts, cores, shipments);
    }

    /** The same and jobs. */
    public Named withJobs(Collection<String> names) {
        return new Named(with(jobs, names), kits, parts, cores, shipments);
    }

    /** The same and a kit, if one is given. */
    public Named withKit(@Nullable String kit) {
        return kit == null
                ? this
                : new Named(jobs, with(kits, List.of(kit)), parts, cores, shipments);
    }

    /** The same and kits. */
    public Named withKits(Collection<String> serials) {
        return new Named(jobs, with(kits, serials), parts, cores, shipments);
    }

    /** The same and a loose part, if one is given. */
    public Named withPart(@Nullable String part) {
        return part == null
                ? this
                : new Named(jobs, kits, with(parts, List.of(part)), cores, shipments);
    }

    /** The same and loose parts. */
    public Named withParts(Collection<String> numbers) {
        return new Named(jobs, kits, with(parts, numbers), cores, shipments);
    }

    /** The same and cores. */
    public Named withCores(Collection<String> tags) {
        return new Named(jobs, kits, parts, with(cores, tags), shipments);
    }

    /** The same and a shipment. */
    public Named withShipment(String name) {
        return new Named(jobs, kits, parts, cores, with(shipments, List.of(name)));
    }

    private static Set<String> with(Set<String> those, Collection<String> more) {
        Set<String> all = new TreeSet<>(those);
        all.addAll(more);
        return all;
    }
}
