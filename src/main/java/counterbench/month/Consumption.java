package counterbench.month;

import counterbench.shared.Quantity;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The consumption table of a campaign and month, accumulated job by job in any order. Shows every
 * part of the campaign and whatever else its jobs touched.
 */
public final class Consumption {
    private final SortedMap<String, Sums> sums = new TreeMap<>();
    private final NavigableSet<String> fittedParts = new TreeSet<>();
    private long completedJobs;

    public Consumption(CampaignParts shown) {
        shown.listed().forEach(part -> sums.put(part, new Sums()));
    }

    /** Adds one completed job with every part that it required, used or still has. */
    public void add(String job, Collection<PartOnJob> parts) {
        completedJobs++;
        for (PartOnJob part : parts) {
            sums.computeIfAbsent(part.part(), p -> new Sums()).add(job, part);
            if (part.isFitted()) {
                fittedParts.add(part.part());
            }
        }
    }

    /** The rows, by part number. */
    public List<ConsumptionRow> rows() {
        return sums.entrySet().stream().map(e -> e.getValue().row(e.getKey())).toList();
    }

    /** The parts that were fitted, new or old. */
    public NavigableSet<String> fittedParts() {
        return new TreeSet<>(fittedParts);
    }

    private final class Sums {
        private Quantity required = Quantity.ZERO;
        private Quantity fittedNew = Quantity.ZERO;
        private Quantity refittedOld = Quantity.ZERO;
        private Quantity scrapped = Quantity.ZERO;
        private Quantity left = Quantity.ZERO;
        private final NavigableSet<String> jobs = new TreeSet<>();

        void add(String job, PartOnJob part) {
            required = required.plus(part.required());
            fittedNew = fittedNew.plus(part.fittedNew());
            refittedOld = refittedOld.plus(part.refittedOld());
            scrapped = scrapped.plus(part.scrapped());
            left = left.plus(part.left());
            if (part.amiss()) {
                jobs.add(job);
            }
        }

        ConsumptionRow row(String part) {
            return new ConsumptionRow(
                    part,
                    completedJobs,
                    required,
                    fittedNew,
                    refittedOld,
                    scrapped,
                    left,
                    List.copyOf(jobs));
        }
    }
}
