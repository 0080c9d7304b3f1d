package counterbench.stock.rules;

import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.stock.Kit;
import counterbench.stock.PartQuantity;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A kit came with something missing. One finding for each kit and missing part. */
public final class KitIncomplete implements Judge<StockFacts> {
    @Override
    public Rule rule() {
        return Rule.KIT_INCOMPLETE;
    }

    @Override
    public void judge(StockFacts facts, Findings findings) {
        facts.kits().forEach(kit -> judge(facts.site(), kit, findings));
    }

    private void judge(Site site, Kit kit, Findings findings) {
        kit.missing().stream()
                .map(PartQuantity::part)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .filter(part -> kit.missingOf(part).isPositive())
                .forEach(part -> findings.add(finding(site, kit, part)));
    }

    private Finding finding(Site site, Kit kit, String part) {
        Quantity missing = kit.missingOf(part);
        return new Finding(
                rule(),
                site.site(),
                null,
                Subject.ofPart(SubjectKind.KIT, kit.kit(), part),
                site.monthOf(kit.receivedAt()),
                String.format(
                        "kit %s (%s) came without %s of %s on %s",
                        kit.kit(), kit.kitPart(), missing, part, site.dayOf(kit.receivedAt())),
                "missing " + missing);
    }
}
