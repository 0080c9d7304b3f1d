package counterbench.acts.store;

import counterbench.acts.desk.InboundCosts;
import counterbench.campaign.PartUnit;
import counterbench.db.Store;
import counterbench.journal.Seal;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.SealReader;
import counterbench.review.Component;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreMoves;
import counterbench.stock.worth.CostMethod;
import counterbench.stock.worth.PartWorth;
import counterbench.stock.worth.Rounding;
import counterbench.stock.worth.StoreStanding;
import counterbench.stock.worth.StoreStanding.Costing;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;

/**
 * What the loose parts of a site were worth in a month. A sealed month is valued as known at its
 * seal; the first open one opens with that, and has in it whatever was recorded about it since.
 */
public final class ReadWorth {
    private final Store store;
    private final Site site;
    private final CostMethod method;
    private final Rounding rounding;

    public ReadWorth(Store store, Site site, CostMethod method, Rounding rounding) {
        this.store = store;
        this.site = site;
        this.method = method;
        this.rounding = rounding;
    }

    /**
     * The store's month.
     *
     * @param parts every part that was there or moved, by part number
     * @param units in which its parts are counted or measured
     */
    public record StoreMonth(List<PartWorth> parts, Map<String, PartUnit> units) {
        /** The unit of a part; each where nobody says. */
        public PartUnit unit(String part) {
            return units.getOrDefault(part, PartUnit.EACH);
        }
    }

    /**
     * The month of every part that was there or moved.
     *
     * @param now up to when facts of a month that is not sealed count
     * @param progress is told how many jobs have been gone through
     */
    public StoreMonth of(YearMonth month, Instant now, LongConsumer progress) {
        SealedMonths sealed = store.read(sql -> SealReader.upTo(sql, site.no(), ReviewSite.NEWEST));
        YearMonth before = month.minusMonths(1);
        Valued known = valued(sealed.of(month), now, progress);
        Valued opening =
                sealed.of(before).isPresent() ? valued(sealed.of(before), now, progress) : known;
        List<PartWorth> parts = PartWorth.between(opening.at(before), known.at(month));
        return new StoreMonth(
                rounding == Rounding.WHOLE
                        ? parts.stream().map(PartWorth::inWholeUnits).toList()
                        : parts,
                known.units());
    }

    private record Valued(List<Move> moves, Costing costing, Map<String, PartUnit> units) {
        Map<String, StoreStanding> at(YearMonth month) {
            return StoreStanding.of(moves, month, costing);
        }
    }

    private record Worked(Ledger ledger, int jobs) {
        static Worked of(Component component) {
            return new Worked(Ledger.of(component.facts()), component.jobs().size());
        }
    }

    private Valued valued(Optional<Seal> seal, Instant now, LongConsumer progress) {
        Instant asOf = seal.map(Seal::at).orElse(now);
        long known = seal.map(Seal::entry).orElse(ReviewSite.NEWEST);
        try (SiteScan scan = new SiteScan(store, site, asOf, known)) {
            StoreMoves moves = new StoreMoves();
            long[] jobs = {0};
            scan.all(
                    Worked::of,
                    worked -> {
                        moves.add(worked.ledger());
                        jobs[0] += worked.jobs();
                        progress.accept(jobs[0]);
                    });
            List<Move> all = moves.all(Ledger.of(scan.storeOnly()), scan.looseCounts());
            InboundCosts inbound =
                    new InboundCosts(
                            scan.terms(), new JooqDirectory(store, site, asOf)::costElsewhere);
            Costing costing =
                    new Costing(method, rounding, inbound, move -> site.monthOf(move.at()));
            return new Valued(all, costing, scan.terms().partUnits());
        }
    }
}
