package counterbench.campaign;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** All loaded packs, found by campaign and day. */
public final class Packs {
    private final NavigableMap<String, NavigableMap<LocalDate, Pack>> byCampaign = new TreeMap<>();

    public Packs(Collection<Pack> packs) {
        for (Pack pack : packs) {
            byCampaign
                    .computeIfAbsent(pack.campaign(), c -> new TreeMap<>())
                    .put(pack.inForceFrom(), pack);
        }
    }

    /** The numbers of all campaigns, sorted. */
    public Set<String> campaigns() {
        return new TreeSet<>(byCampaign.keySet());
    }

    /** The revisions of a campaign, oldest first; empty where none is loaded. */
    public List<Pack> revisions(String campaign) {
        return List.copyOf(byCampaign.getOrDefault(campaign, new TreeMap<>()).values());
    }

    /**
     * The revision in force on a day; before the first one's day the first, since work done early
     * is judged by the only terms there are.
     */
    public Optional<Pack> inForce(String campaign, LocalDate day) {
        NavigableMap<LocalDate, Pack> revisions = byCampaign.get(campaign);
        if (revisions == null) {
            return Optional.empty();
        }
        var floor = revisions.floorEntry(day);
        return Optional.of(floor != null ? floor.getValue() : revisions.firstEntry().getValue());
    }

    /** The first revision that comes in force after a day; empty where none is loaded. */
    public Optional<Pack> nextAfter(String campaign, LocalDate day) {
        NavigableMap<LocalDate, Pack> revisions = byCampaign.get(campaign);
        return Optional.ofNullable(revisions)
                .flatMap(r -> Optional.ofNullable(r.higherEntry(day)))
                .map(Map.Entry::getValue);
    }

    /**
     * The contents of a kit by its part number: those of the named revision, or of the one in force
     * on the day of receipt. Where several campaigns state the kit, the first by number that has
     * the revision.
     */
    public Optional<KitTerms> kit(String kitPart, @Nullable String revision, LocalDate receivedOn) {
        return campaigns().stream()
                .flatMap(c -> candidate(c, kitPart, revision, receivedOn).stream())
                .flatMap(p -> p.kit(kitPart).stream())
                .findFirst();
    }

    private Optional<Pack> candidate(
            String campaign, String kitPart, @Nullable String revision, LocalDate day) {
        if (revision == null) {
            return inForce(campaign, day).filter(p -> p.kit(kitPart).isPresent());
        }
        return revisions(campaign).stream()
                .filter(p -> p.revision().equals(revision) && p.kit(kitPart).isPresent())
                .findFirst();
    }

    /** Every pack, by campaign, oldest first. */
    public List<Pack> all() {
        return byCampaign.values().stream().flatMap(m -> m.values().stream()).toList();
    }
}
