package counterbench.acts.store;

import static counterbench.db.generated.Tables.RECEIPTS_FACT;

import counterbench.acts.Expiring;
import counterbench.acts.Holding;
import counterbench.acts.KitListing;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.db.Store;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.stock.Source;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Looks up what is on the shelf and may not be used for much longer, or not any more. */
public final class ReadExpiring {
    private final Store store;

    public ReadExpiring(Store store) {
        this.store = store;
    }

    /** Kits and lots whose last usable day is not after that one, the soonest first. */
    public List<Expiring> until(Site site, Instant now, LocalDate last) {
        List<Expiring> found = new ArrayList<>();
        for (KitListing kit : new ShelfKits(store, site, now).list(Optional.empty())) {
            LocalDate until = kit.kit().expiresOn();
            if (until != null && !until.isAfter(last)) {
                found.add(
                        new Expiring(
                                until,
                                kit.serial(),
                                kit.kit().kitPart(),
                                kit.kit().lot(),
                                Quantity.ONE));
            }
        }
        addLots(site, now, last, found);
        found.sort(Expiring.SOONEST_FIRST);
        return found;
    }

    private void addLots(Site site, Instant now, LocalDate last, List<Expiring> found) {
        Set<String> parts = new TreeSet<>(partsWithLots(site, last));
        if (parts.isEmpty()) {
            return;
        }
        Situation situation =
                new ReadSituation(store).run(site, now, Named.NOTHING.withParts(parts));
        for (String part : parts) {
            for (Holding holding : situation.shelf(part).holdings()) {
                expiring(situation, holding)
                        .filter(lot -> !lot.until().isAfter(last))
                        .ifPresent(found::add);
            }
        }
    }

    private static Optional<Expiring> expiring(Situation situation, Holding holding) {
        if (holding.source().kind() != Source.Kind.LOT || !holding.quantity().isPositive()) {
            return Optional.empty();
        }
        String lot = Objects.requireNonNull(holding.source().name());
        return situation
                .terms()
                .expiryOf(holding.part(), lot)
                .map(day -> new Expiring(day, null, holding.part(), lot, holding.quantity()));
    }

    private List<String> partsWithLots(Site site, LocalDate last) {
        return store.read(
                sql ->
                        sql.selectDistinct(RECEIPTS_FACT.PART)
                                .from(RECEIPTS_FACT)
                                .where(
                                        RECEIPTS_FACT.SITE_NO.eq((short) site.no()),
                                        RECEIPTS_FACT.EXPIRES_ON.le(last))
                                .fetch(RECEIPTS_FACT.PART));
    }
}
