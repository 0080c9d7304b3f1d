package counterbench.stock;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.shared.Quantity;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Says which kit the hardware of a job's use comes from: the kit that the row names; else, unless
 * the hardware is old, the one kit issued to the job that holds the part, if there is exactly one.
 *
 * <p>A kit holds what its contents list, less what it came without. A kit whose contents nobody
 * knows holds nothing.
 */
public final class SourceOfUse {
    private final List<String> issued;
    private final Map<String, Kit> kits;
    private final Map<String, KitTerms> contents;
    private final Map<String, Optional<String>> onlyKits = new HashMap<>();

    /**
     * @param issued serials of the kits issued to the job; one issued twice counts once
     * @param kits kits by serial, at least those issued that the site knows
     * @param contents what those kits hold, by serial, where known
     */
    public SourceOfUse(
            Collection<String> issued, Map<String, Kit> kits, Map<String, KitTerms> contents) {
        this.issued = List.copyOf(new TreeSet<>(issued));
        this.kits = kits;
        this.contents = contents;
    }

    /** For the kits among a job's issues. */
    public static SourceOfUse ofIssues(
            Collection<Issue> issuesOfJob, Map<String, Kit> kits, Map<String, KitTerms> contents) {
        List<String> serials =
                issuesOfJob.stream().map(Issue::kit).filter(Objects::nonNull).toList();
        return new SourceOfUse(serials, kits, contents);
    }

    /** The serial of the kit that the use is taken from; empty where it comes from none. */
    public Optional<String> kitOf(Use use) {
        if (use.kit() != null) {
            return Optional.of(use.kit());
        }
        return isOld(use) ? Optional.empty() : onlyKitWith(use.part());
    }

    /** The serials of the kits issued to the job that hold the part, sorted. */
    public List<String> kitsWith(String part) {
        return issued.stream().filter(serial -> holds(serial, part)).toList();
    }

    /** How much of a part a kit held when it came: its contents less what was missing. */
    public static Quantity held(Kit kit, KitTerms contents, String part) {
        Quantity held = Quantity.ZERO;
        for (KitLine line : contents.contents()) {
            if (line.part().equals(part)) {
                held = held.plus(line.quantity());
            }
        }
        return held.minus(kit.missingOf(part));
    }

    private static boolean isOld(Use use) {
        return use.condition() == Use.Condition.REUSED || use.was() == Use.Condition.REUSED;
    }

    /** The kit that hardware of which nobody names one is taken from, unless it is old. */
    public Optional<String> onlyKitWith(String part) {
        return onlyKits.computeIfAbsent(part, this::onlyHolding);
    }

    private Optional<String> onlyHolding(String part) {
        List<String> holding = kitsWith(part);
        return holding.size() == 1 ? Optional.of(holding.get(0)) : Optional.empty();
    }

    private boolean holds(String serial, String part) {
        Kit kit = kits.get(serial);
        KitTerms terms = contents.get(serial);
        return kit != null && terms != null && held(kit, terms, part).isPositive();
    }
}
