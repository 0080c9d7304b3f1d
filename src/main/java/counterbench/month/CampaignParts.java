package counterbench.month;

import counterbench.campaign.KitLine;
import counterbench.campaign.Pack;
import java.util.Collection;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The part numbers that a campaign's tables show.
 *
 * @param listed every number that a kit lists in any revision
 * @param older numbers that those replace
 */
public record CampaignParts(NavigableSet<String> listed, NavigableSet<String> older) {
    public CampaignParts {
        listed = new TreeSet<>(listed);
        older = new TreeSet<>(older);
    }

    /** Those of the revisions of one campaign. */
    public static CampaignParts of(Collection<Pack> revisions) {
        NavigableSet<String> listed = new TreeSet<>();
        NavigableSet<String> older = new TreeSet<>();
        revisions.stream()
                .flatMap(pack -> pack.kits().stream())
                .flatMap(kit -> kit.contents().stream())
                .forEach(
                        (KitLine line) -> {
                            listed.add(line.part());
                            older.addAll(line.replaces());
                        });
        return new CampaignParts(listed, older);
    }

    /**
     * What goods show: every number that a kit lists, older ones that occur, and what was fitted.
     *
     * @param occurring numbers that moved or were counted
     * @param fitted numbers that were fitted on the campaign's jobs
     */
    public NavigableSet<String> forGoods(Collection<String> occurring, Collection<String> fitted) {
        NavigableSet<String> parts = new TreeSet<>(older);
        parts.retainAll(occurring);
        parts.addAll(listed);
        parts.addAll(fitted);
        return parts;
    }
}
