package counterbench.job.rules;

import counterbench.campaign.KitTerms;
import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.Use;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What is known of the goods of one job.
 *
 * @param issues what was issued to it
 * @param uses what became of hardware on it; kept in order of time, then row
 * @param kits kits by serial: of those that its rows name, the ones that the site knows
 * @param contents what those kits hold, by serial, where a pack says
 * @param lotExpiry the last usable day of loose lots, where receipts say; the earliest, if they
 *     differ
 * @param bench what its bench account holds as of now, by real part number
 * @param units of parts that the job's pack does not name; one that is missing here is counted
 */
public record JobGoods(
        List<Issue> issues,
        List<Use> uses,
        Map<String, Kit> kits,
        Map<String, KitTerms> contents,
        Map<PartLot, LocalDate> lotExpiry,
        Map<String, Quantity> bench,
        Map<String, PartUnit> units) {
    private static final Comparator<Use> BY_TIME =
            Comparator.comparing(Use::at).thenComparing(Use::address);

    public JobGoods {
        issues = List.copyOf(issues);
        uses = uses.stream().sorted(BY_TIME).toList();
        kits = Map.copyOf(kits);
        contents = Map.copyOf(contents);
        lotExpiry = Map.copyOf(lotExpiry);
        bench = Map.copyOf(bench);
        units = Map.copyOf(units);
    }
}
