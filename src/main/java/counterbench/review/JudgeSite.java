package counterbench.review;

import counterbench.claims.CreditFacts;
import counterbench.claims.rules.CreditRules;
import counterbench.cores.ShipmentFacts;
import counterbench.cores.rules.ShipmentRules;
import counterbench.judgement.Findings;
import counterbench.shared.Site;
import counterbench.stock.StoreTimeline;
import counterbench.stock.rules.StockFacts;
import counterbench.stock.rules.StockRules;
import java.util.Collection;

/** Judges what belongs to no job: the loose store, credits of no claim, shipments. */
public final class JudgeSite {
    private JudgeSite() {}

    /** Judges the timelines of loose parts. */
    public static void store(Site site, Collection<StoreTimeline> timelines, Findings findings) {
        JudgeComponent.run(StockRules.ALL, StockFacts.ofStore(site, timelines), findings);
    }

    /** Judges a credit that no claim has. */
    public static void credit(CreditFacts facts, Findings findings) {
        JudgeComponent.run(CreditRules.ALL, facts, findings);
    }

    /** Judges a shipment. */
    public static void shipment(ShipmentFacts facts, Findings findings) {
        JudgeComponent.run(ShipmentRules.ALL, facts, findings);
    }
}
