package counterbench.campaign;

import counterbench.shared.Problem;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a pack may join those loaded already: the revisions of a campaign come one after another,
 * and what was loaded is not changed. Campaigns may share a kit part.
 */
public final class Revisions {
    private Revisions() {}

    /** Whether the very same terms are loaded already, so that nothing is left to do. */
    public static boolean isKnown(Collection<Pack> loaded, Pack pack) {
        return loaded.contains(pack);
    }

    /** Why the pack cannot be loaded; empty if it can, or is known already. */
    public static List<Problem> problemsOf(Collection<Pack> loaded, Pack pack) {
        if (isKnown(loaded, pack)) {
            return List.of();
        }
        Optional<Problem> changed = changed(loaded, pack);
        Stream<Problem> order =
                changed.isPresent() ? changed.stream() : early(loaded, pack).stream();
        return Stream.concat(order, otherUnits(loaded, pack)).toList();
    }

    private static Stream<Pack> ofCampaign(Collection<Pack> loaded, Pack pack) {
        return loaded.stream().filter(p -> p.campaign().equals(pack.campaign()));
    }

    private static Optional<Problem> changed(Collection<Pack> loaded, Pack pack) {
        return ofCampaign(loaded, pack)
                .filter(p -> p.revision().equals(pack.revision()))
                .findFirst()
                .map(
                        p ->
                                new Problem(
                                        name(pack),
                                        "this revision is there with other terms",
                                        "give the changed terms a revision of their own"));
    }

    private static Optional<Problem> early(Collection<Pack> loaded, Pack pack) {
        return ofCampaign(loaded, pack)
                .filter(p -> !p.inForceFrom().isBefore(pack.inForceFrom()))
                .findFirst()
                .map(
                        p ->
                                new Problem(
                                        "%s, in force from %s"
                                                .formatted(name(pack), pack.inForceFrom()),
                                        "revision %s is in force from %s"
                                                .formatted(p.revision(), p.inForceFrom()),
                                        "revisions come one after the other, each in force later than"
                                                + " the one before"));
    }

    private static Stream<Problem> otherUnits(Collection<Pack> loaded, Pack pack) {
        Map<String, PartUnit> known = new HashMap<>();
        loaded.stream().flatMap(Revisions::lines).forEach(l -> known.put(l.part(), l.unit()));
        return lines(pack)
                .filter(l -> known.getOrDefault(l.part(), l.unit()) != l.unit())
                .map(l -> otherUnit(l, known.getOrDefault(l.part(), l.unit())))
                .distinct();
    }

    /** Where the pack has a part in another unit than a site's list of parts. */
    public static List<Problem> contradictions(Collection<ListedPart> listed, Pack pack) {
        return lines(pack)
                .flatMap(
                        line ->
                                listed.stream()
                                        .filter(part -> part.part().equals(line.part()))
                                        .filter(part -> part.unit() != line.unit())
                                        .map(part -> contradiction(line, part)))
                .distinct()
                .toList();
    }

    private static Problem contradiction(KitLine line, ListedPart part) {
        return new Problem(
                "part %s in %s".formatted(line.part(), line.unit().word()),
                "the list of parts of site %s has it in %s"
                        .formatted(part.site(), part.unit().word()),
                "correct the pack; or, if the list is wrong, take its row back (journal show"
                        + " finds it)");
    }

    private static Problem otherUnit(KitLine line, PartUnit known) {
        return new Problem(
                "part %s in %s".formatted(line.part(), line.unit().word()),
                "a loaded pack has it in " + known.word(),
                "keep a part in one unit in all packs");
    }

    private static Stream<KitLine> lines(Pack pack) {
        return pack.kits().stream().flatMap(k -> k.contents().stream());
    }

    private static String name(Pack pack) {
        return "campaign %s revision %s".formatted(pack.campaign(), pack.revision());
    }
}
