package counterbench.stock.rules;

import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.BelowZero;
import counterbench.stock.Count;
import counterbench.stock.CountDifference;
import counterbench.stock.Kit;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.ReceivedKit;
import counterbench.stock.StockEvent;
import counterbench.stock.StoreTimeline;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What the stock rules judge: the kits of one component, or the loose stock of any number of parts.
 *
 * @param kits kits received at the site
 * @param knownKits serials of kits that were received at the site or arrived there
 * @param events rows that may name a kit
 * @param counts counts that may name a kit
 * @param belowZero accounts that fell below zero
 * @param differences counts that differ from the book
 */
public record StockFacts(
        Site site,
        List<Kit> kits,
        Set<String> knownKits,
        List<StockEvent> events,
        List<Count> counts,
        List<BelowZero> belowZero,
        List<CountDifference> differences) {
    public StockFacts {
        Objects.requireNonNull(site, "site");
        kits = List.copyOf(kits);
        knownKits = Set.copyOf(knownKits);
        events = List.copyOf(events);
        counts = List.copyOf(counts);
        belowZero = List.copyOf(belowZero);
        differences = List.copyOf(differences);
    }

    /** The kits of a component, with what its ledger says. */
    public static StockFacts ofKits(Site site, LedgerFacts facts, Ledger ledger) {
        return new StockFacts(
                site,
                facts.kits().stream().map(ReceivedKit::kit).toList(),
                known(facts),
                facts.events(),
                facts.counts(),
                BelowZero.in(ledger.moves(), a -> a.kind() == Account.Kind.KIT),
                ledger.differences());
    }

    /** The loose stock, with what the timelines of its parts say. */
    public static StockFacts ofStore(Site site, Collection<StoreTimeline> timelines) {
        List<BelowZero> belowZero = new ArrayList<>();
        List<CountDifference> differences = new ArrayList<>();
        for (StoreTimeline timeline : timelines) {
            timeline.belowZero().ifPresent(belowZero::add);
            differences.addAll(timeline.differences());
        }
        return new StockFacts(
                site, List.of(), Set.of(), List.of(), List.of(), belowZero, differences);
    }

    /** A kit that arrived from another site is as known as one that was received. */
    private static Set<String> known(LedgerFacts facts) {
        Set<String> known = new HashSet<>();
        facts.kits().forEach(k -> known.add(k.kit().kit()));
        for (StockEvent event : facts.events()) {
            if (event.kind() == StockEvent.Kind.ARRIVED && event.kit() != null) {
                known.add(event.kit());
            }
        }
        return known;
    }
}
