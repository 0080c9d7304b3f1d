package counterbench.acts;

import counterbench.campaign.KitTerms;
import counterbench.campaign.Packs;
import counterbench.campaign.PartUnit;
import counterbench.shared.NearMatch;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Part numbers and quantities as acts may name them. */
public final class Parts {
    private final Packs packs;
    private final SortedMap<String, PartUnit> units;

    private Parts(Packs packs, SortedMap<String, PartUnit> units) {
        this.packs = packs;
        this.units = units;
    }

    /** Those that packs and the list of parts name. */
    public static Parts of(Situation situation) {
        return new Parts(situation.terms().packs(), new TreeMap<>(situation.terms().partUnits()));
    }

    /**
     * Refuses a part that nobody knows, or that is a kit.
     *
     * @param part the loose part
     */
    public void mustBeLoose(String part) {
        if (units.containsKey(part)) {
            return;
        }
        if (kitParts().contains(part)) {
            throw new Refused(
                    "part \"" + part + "\"",
                    "it is a kit, which goes by its serial",
                    "say kit receive, kit issue and so on instead");
        }
        throw new Refused(
                "part \"" + part + "\"",
                "no loaded pack and no list of parts names it",
                NearMatch.of(part, units.keySet())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("load its campaign's pack: campaign load FILE"));
    }

    /** Refuses a kit part that no loaded pack names. */
    public void mustBeKit(String kitPart) {
        SortedSet<String> known = kitParts();
        if (!known.contains(kitPart)) {
            throw new Refused(
                    "kit part \"" + kitPart + "\"",
                    "no loaded pack has a kit of that part",
                    NearMatch.of(kitPart, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse(
                                    known.isEmpty()
                                            ? "load its campaign's pack: campaign load FILE"
                                            : "there are " + String.join(", ", known)));
        }
    }

    /** Refuses a quantity that is not above zero, or half a piece. */
    public void mustBeSome(String part, Quantity quantity) {
        if (!quantity.isPositive()) {
            throw new Refused(
                    "quantity \"" + quantity + "\" of " + part,
                    "it is not above zero",
                    "say how much it is; a mistake is taken back with reverse");
        }
        mustBeWhole(part, quantity);
    }

    /** Refuses half a piece and less than nothing. */
    public void mustBeWhole(String part, Quantity quantity) {
        PartUnit unit = unit(part);
        boolean whole = quantity.amount().stripTrailingZeros().scale() <= 0;
        if (quantity.isNegative() || (!unit.isMeasured() && !whole)) {
            throw new Refused(
                    "quantity \"" + quantity + "\" of " + part,
                    quantity.isNegative() ? "it is below zero" : "the part is counted in pieces",
                    "say a whole number of pieces, or so many mL or g of a measured part");
        }
    }

    /**
     * One piece of a part.
     *
     * @throws Refused if it is measured, so that somebody must say how much it is
     */
    public Quantity onePiece(String part) {
        if (unit(part).isMeasured()) {
            throw new Refused(
                    "part \"" + part + "\"",
                    "it is measured in " + unit(part).word(),
                    "say how much it is, such as 3.5");
        }
        return Quantity.ONE;
    }

    private PartUnit unit(String part) {
        return units.getOrDefault(part, PartUnit.EACH);
    }

    /** So much of a part with its unit: {@code 3 HB-3013}, {@code 5 mL HB-3015}. */
    public String words(String part, Quantity quantity) {
        return amount(part, quantity) + " " + part;
    }

    /** So much of a part: {@code 3}, {@code 5 mL}. */
    public String amount(String part, Quantity quantity) {
        PartUnit unit = unit(part);
        return quantity + (unit.isMeasured() ? " " + unit.word() : "");
    }

    private SortedSet<String> kitParts() {
        return packs.all().stream()
                .flatMap(pack -> pack.kits().stream())
                .map(KitTerms::part)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
