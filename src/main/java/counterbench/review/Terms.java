package counterbench.review;

import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.campaign.PartUnits;
import counterbench.procedure.Instrument;
import counterbench.stock.Receipt;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What holds for all jobs of a site while it is reviewed.
 *
 * @param listedCampaigns campaigns that have a list of vehicles
 * @param partUnits units of parts, given as lists of parts state them; packs go before those
 * @param instruments instruments by name
 * @param serialTwins serials that more than one removed core bears, with the tags of those cores
 * @param receipts loose parts received
 */
public record Terms(
        Packs packs,
        Set<String> listedCampaigns,
        Map<String, PartUnit> partUnits,
        Map<String, Instrument> instruments,
        Map<String, Set<String>> serialTwins,
        List<Receipt> receipts) {
    public Terms {
        listedCampaigns = Set.copyOf(listedCampaigns);
        partUnits = new PartUnits(packs, partUnits).all();
        instruments = Map.copyOf(instruments);
        serialTwins = Map.copyOf(serialTwins);
        receipts = List.copyOf(receipts);
    }

    /** The parts that are measured, not counted. */
    public Set<String> measuredParts() {
        Set<String> measured = new HashSet<>();
        partUnits.forEach(
                (part, unit) -> {
                    if (unit.isMeasured()) {
                        measured.add(part);
                    }
                });
        return measured;
    }

    /** The last usable day of a lot of a loose part: the earliest that a receipt of it states. */
    public Optional<LocalDate> expiryOf(String part, String lot) {
        return receipts.stream()
                .filter(r -> r.part().equals(part) && lot.equals(r.lot()) && r.expiresOn() != null)
                .map(Receipt::expiresOn)
                .min(LocalDate::compareTo);
    }
}
