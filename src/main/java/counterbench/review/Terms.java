package counterbench.review;

import counterbench.campaign.KitLine;
import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.procedure.Instrument;
import counterbench.stock.Receipt;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What holds for all jobs of a site while it is reviewed.
 *
 * @param listedCampaigns campaigns that have a list of vehicles
 * @param partUnits units of parts that a sheet lists
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
        partUnits = withPackUnits(packs, partUnits);
        instruments = Map.copyOf(instruments);
        serialTwins = Map.copyOf(serialTwins);
        receipts = List.copyOf(receipts);
    }

    /** What a pack says of a part goes before what a sheet says. */
    private static Map<String, PartUnit> withPackUnits(Packs packs, Map<String, PartUnit> listed) {
        Map<String, PartUnit> units = new HashMap<>(listed);
        packs.all().stream()
                .flatMap(p -> p.kits().stream())
                .flatMap(k -> k.contents().stream())
                .forEach(line -> putUnits(units, line));
        return Map.copyOf(units);
    }

    private static void putUnits(Map<String, PartUnit> units, KitLine line) {
        units.put(line.part(), line.unit());
        line.replaces().forEach(old -> units.putIfAbsent(old, line.unit()));
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
