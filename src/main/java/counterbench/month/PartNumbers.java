package counterbench.month;

import counterbench.campaign.KitLine;
import counterbench.campaign.Pack;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * The part numbers of a campaign over all its revisions, and which older ones count as which newer
 * ones.
 */
public final class PartNumbers {
    private final NavigableSet<String> listed = new TreeSet<>();
    private final Map<String, String> newer = new HashMap<>();

    /** Those of the revisions, oldest first. */
    public PartNumbers(Collection<Pack> revisions) {
        revisions.stream()
                .flatMap(pack -> pack.kits().stream())
                .flatMap(kit -> kit.contents().stream())
                .forEach(this::read);
    }

    private void read(KitLine line) {
        listed.add(line.part());
        line.replaces().forEach(old -> newer.put(old, line.part()));
    }

    /** The newest number that this one counts as; itself where nothing replaces it. */
    public String newest(String part) {
        Set<String> passed = new HashSet<>();
        String at = part;
        while (newer.containsKey(at) && passed.add(at)) {
            at = newer.getOrDefault(at, at);
        }
        return at;
    }

    /** What consumption shows: every number that nothing replaces. */
    public NavigableSet<String> newest() {
        NavigableSet<String> rows = new TreeSet<>();
        listed.forEach(part -> rows.add(newest(part)));
        return rows;
    }

    /**
     * What goods show: every number that a kit lists, older ones that occur, and what was fitted.
     *
     * @param occurring numbers that moved or were counted
     * @param fitted numbers that were fitted on the campaign's jobs
     */
    public NavigableSet<String> real(Collection<String> occurring, Collection<String> fitted) {
        NavigableSet<String> parts = new TreeSet<>(listed);
        occurring.stream().filter(newer::containsKey).forEach(parts::add);
        parts.addAll(fitted);
        return parts;
    }
}
