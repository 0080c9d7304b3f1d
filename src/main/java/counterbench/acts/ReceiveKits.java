package counterbench.acts;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.stock.PartQuantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Takes in kits of one part that came together. */
public record ReceiveKits(List<String> kits, String kitPart, Delivery delivery, Stamp stamp)
        implements Act {
    public ReceiveKits {
        kits = List.copyOf(kits);
    }

    /**
     * What all of them share.
     *
     * @param revision the revision that they were packed under; the one in force unless said
     * @param expiresOn the last usable day
     * @param unitCost what one cost, in the site's currency
     * @param missing what each of them came without
     * @param document the paper's own number
     */
    public record Delivery(
            @Nullable String revision,
            @Nullable LocalDate expiresOn,
            @Nullable String lot,
            @Nullable BigDecimal unitCost,
            List<PartQuantity> missing,
            @Nullable String document) {
        public Delivery {
            missing = missing.stream().sorted(Comparator.comparing(PartQuantity::part)).toList();
        }

        private @Nullable String missingText() {
            return missing.isEmpty()
                    ? null
                    : missing.stream()
                            .map(item -> item.part() + ":" + item.quantity())
                            .collect(Collectors.joining("; "));
        }
    }

    @Override
    public FactKind makes() {
        return FactKind.KITS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withKits(kits);
    }

    @Override
    public Decision decide(Situation situation) {
        Parts.of(situation).mustBeKit(kitPart);
        KitTerms terms = terms(situation);
        refuseUnlessNew(situation);
        delivery.missing().forEach(item -> mustHold(terms, item));
        if (delivery.unitCost() != null && delivery.unitCost().signum() < 0) {
            throw new Refused(
                    "cost \"" + delivery.unitCost() + "\"",
                    "it is below zero",
                    "say what one cost");
        }
        return new Decision(
                kits.stream().map(kit -> row(situation, kit)).toList(), remarks(situation, terms));
    }

    private FactRow row(Situation situation, String kit) {
        boolean priced = delivery.unitCost() != null;
        return stamp.row(FactKind.KITS)
                .with("kit", kit)
                .with("kit_part", kitPart)
                .with("revision", delivery.revision())
                .with("expires_on", delivery.expiresOn())
                .with("lot", delivery.lot())
                .with("unit_cost", delivery.unitCost())
                .with("currency", priced ? situation.site().currency().getCurrencyCode() : null)
                .with("missing", delivery.missingText())
                .with("document", delivery.document());
    }

    private KitTerms terms(Situation situation) {
        LocalDate day = situation.site().dayOf(stamp.at());
        return situation
                .terms()
                .packs()
                .kit(kitPart, delivery.revision(), day)
                .orElseThrow(() -> noRevision(situation));
    }

    private Refused noRevision(Situation situation) {
        TreeSet<String> known =
                situation.terms().packs().all().stream()
                        .filter(pack -> pack.kit(kitPart).isPresent())
                        .map(Pack::revision)
                        .collect(Collectors.toCollection(TreeSet::new));
        return new Refused(
                "revision \"" + delivery.revision() + "\" of kit part " + kitPart,
                "no loaded pack of that revision has the kit",
                "there are " + String.join(", ", known));
    }

    private void refuseUnlessNew(Situation situation) {
        List<Problem> problems = new ArrayList<>(NamedTwice.problems("kit", kits));
        kits.forEach(kit -> problem(situation, kit).ifPresent(problems::add));
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
    }

    private static Optional<Problem> problem(Situation situation, String kit) {
        Optional<KitState> held = situation.findKit(kit);
        if (held.isPresent()) {
            return Optional.of(
                    new Problem(
                            "kit \"" + kit + "\"",
                            "the site has it already, and it " + held.get().whereabouts(),
                            "look at the label again; kit show " + kit + " tells its life"));
        }
        return situation.directory().underWay().ofKit(kit).stream()
                .map(UnderWay.Sending::otherSite)
                .findFirst()
                .map(
                        from ->
                                new Problem(
                                        "kit \"" + kit + "\"",
                                        "it comes from site " + from + ", not from the supplier",
                                        "say kit arrive " + kit + " --from " + from));
    }

    private void mustHold(KitTerms terms, PartQuantity item) {
        List<String> parts = terms.contents().stream().map(KitLine::part).toList();
        Quantity held = held(terms, item.part());
        if (!parts.contains(item.part())) {
            throw new Refused(
                    "missing \"" + item.part() + "\"",
                    "kit part " + kitPart + " holds no such part",
                    NearMatch.of(item.part(), parts)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("it holds " + String.join(", ", parts)));
        }
        if (held.isLessThan(item.quantity()) || !item.quantity().isPositive()) {
            throw new Refused(
                    "missing \"" + item.part() + ":" + item.quantity() + "\"",
                    "kit part " + kitPart + " holds " + held + " of it",
                    "say how much of that was not there");
        }
    }

    private static Quantity held(KitTerms terms, String part) {
        return terms.contents().stream()
                .filter(line -> line.part().equals(part))
                .map(KitLine::quantity)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    private List<String> remarks(Situation situation, KitTerms terms) {
        LocalDate until = delivery.expiresOn();
        LocalDate day = situation.site().dayOf(stamp.at());
        if (until != null && day.isAfter(until)) {
            return List.of(
                    "expired: the last usable day was " + until + "; send it back or scrap it");
        }
        return terms.contents().stream()
                .filter(line -> until == null && line.shelfLife())
                .map(
                        line ->
                                line.name()
                                        + " "
                                        + line.part()
                                        + " has a shelf life, and no last usable day was said;"
                                        + " import it later with a sheet called kits")
                .limit(1)
                .toList();
    }
}
