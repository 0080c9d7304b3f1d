package counterbench.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Splits facts into components: jobs and kits that issues and uses link with each other, and with
 * nothing else. Most components are one job with its kit; jobs come together where they share one.
 *
 * <p>Link all pairs of job and kit first, then ask. Loose receipts, loose stock events and counts
 * of loose parts belong to no component.
 */
public final class Components {
    private final Map<String, String> parents = new HashMap<>();

    /** Says that an issue or a use of a job names a kit. */
    public void link(String job, String kit) {
        String jobRoot = root(jobKey(job));
        String kitRoot = root(kitKey(kit));
        if (!jobRoot.equals(kitRoot)) {
            parents.put(kitRoot, jobRoot);
        }
    }

    /** A name for the component of a job; equal for jobs of one component. */
    public String ofJob(String job) {
        return root(jobKey(job));
    }

    /** A name for the component of a kit; equal to that of the jobs it is linked with. */
    public String ofKit(String kit) {
        return root(kitKey(kit));
    }

    /** The facts of each component; those that belong to none are the first, if there are any. */
    public static List<LedgerFacts> of(LedgerFacts facts) {
        return new Split(facts).parts();
    }

    private static String jobKey(String job) {
        return "job " + job;
    }

    private static String kitKey(String kit) {
        return "kit " + kit;
    }

    private String root(String key) {
        String at = key;
        for (String up = parents.get(at); up != null; up = parents.get(at)) {
            String further = parents.get(up);
            if (further != null) {
                parents.put(at, further);
            }
            at = up;
        }
        return at;
    }

    /** Sorts facts into heaps by component. */
    private static final class Split {
        private static final String NONE = "";

        private final Components components = new Components();
        private final Map<String, Heap> heaps = new TreeMap<>();

        Split(LedgerFacts facts) {
            facts.issues().forEach(i -> link(i.job(), i.kit()));
            facts.uses().forEach(u -> link(u.job(), u.kit()));
            facts.kits().forEach(k -> ofKit(k.kit().kit()).kits.add(k));
            facts.arriving().forEach(k -> ofKit(k.kit().kit()).arriving.add(k));
            facts.receipts().forEach(r -> heap(NONE).receipts.add(r));
            facts.issues().forEach(i -> ofJob(i.job()).issues.add(i));
            facts.uses().forEach(u -> ofJob(u.job()).uses.add(u));
            facts.events().forEach(e -> ofKit(e.kit()).events.add(e));
            facts.counts().forEach(c -> ofKit(c.kit()).counts.add(c));
            facts.ends().forEach(e -> ofJob(e.job()).ends.add(e));
        }

        List<LedgerFacts> parts() {
            return heaps.values().stream().map(Heap::facts).toList();
        }

        private void link(String job, @Nullable String kit) {
            if (kit != null) {
                components.link(job, kit);
            }
        }

        private Heap ofJob(String job) {
            return heap(components.ofJob(job));
        }

        private Heap ofKit(@Nullable String kit) {
            return heap(kit == null ? NONE : components.ofKit(kit));
        }

        private Heap heap(String name) {
            return heaps.computeIfAbsent(name, n -> new Heap());
        }
    }

    private static final class Heap {
        private final List<ReceivedKit> kits = new ArrayList<>();
        private final List<ReceivedKit> arriving = new ArrayList<>();
        private final List<Receipt> receipts = new ArrayList<>();
        private final List<Issue> issues = new ArrayList<>();
        private final List<Use> uses = new ArrayList<>();
        private final List<StockEvent> events = new ArrayList<>();
        private final List<Count> counts = new ArrayList<>();
        private final List<JobEnd> ends = new ArrayList<>();

        LedgerFacts facts() {
            return new LedgerFacts(kits, arriving, receipts, issues, uses, events, counts, ends);
        }
    }
}
