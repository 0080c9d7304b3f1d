package counterbench.acts.store;

import static counterbench.db.generated.Tables.CLAIMS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;
import static counterbench.db.generated.Tables.JOB_NAME;
import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.MATCHES_FACT;
import static counterbench.db.generated.Tables.SHIPMENTS_FACT;

import counterbench.acts.CoreAway;
import counterbench.acts.Directory;
import counterbench.acts.KitListing;
import counterbench.acts.Shipment;
import counterbench.acts.UnderWay;
import counterbench.claims.Credit;
import counterbench.claims.draft.Rate;
import counterbench.cores.Acknowledgement;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.journal.store.AllPosted;
import counterbench.people.store.StaffBook;
import counterbench.review.Settlements;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;

/** The names in the store. One that was recorded and taken back is still a name to propose. */
final class JooqDirectory implements Directory {
    private final Store store;
    private final Site site;
    private final Instant now;
    private final short siteNo;

    JooqDirectory(Store store, Site site, Instant now) {
        this.store = store;
        this.site = site;
        this.now = now;
        this.siteNo = (short) site.no();
    }

    @Override
    public List<String> jobs() {
        return store.read(
                sql ->
                        sql.select(JOB_NAME.JOB)
                                .from(JOB_NAME)
                                .where(JOB_NAME.SITE_NO.eq(siteNo))
                                .fetch(JOB_NAME.JOB));
    }

    @Override
    public List<String> kits() {
        return store.read(
                sql ->
                        sql.selectDistinct(KITS_FACT.KIT)
                                .from(KITS_FACT)
                                .where(KITS_FACT.SITE_NO.eq(siteNo))
                                .fetch(KITS_FACT.KIT));
    }

    @Override
    public List<String> cores() {
        return store.read(
                sql ->
                        sql.select(CORE_TAG.CORE)
                                .from(CORE_TAG)
                                .where(CORE_TAG.SITE_NO.eq(siteNo))
                                .fetch(CORE_TAG.CORE));
    }

    @Override
    public List<String> otherSites() {
        return new StaffBook(store)
                .sites().stream().map(Site::site).filter(s -> !s.equals(site.site())).toList();
    }

    @Override
    public List<KitListing> kitsOnShelf(String kitPart) {
        return new ShelfKits(store, site, now).list(Optional.of(kitPart));
    }

    @Override
    public List<String> shipments() {
        return store.read(
                sql ->
                        sql.selectDistinct(SHIPMENTS_FACT.SHIPMENT)
                                .from(SHIPMENTS_FACT)
                                .where(SHIPMENTS_FACT.SITE_NO.eq(siteNo))
                                .fetch(SHIPMENTS_FACT.SHIPMENT));
    }

    @Override
    public Optional<Shipment> shipment(String shipment) {
        Condition named =
                SHIPMENTS_FACT.SITE_NO.eq(siteNo).and(SHIPMENTS_FACT.SHIPMENT.eq(shipment));
        return store.read(
                sql ->
                        KeyedRows.read(sql, new AllPosted(sql), FactKind.SHIPMENTS, named).stream()
                                .map(found -> Shipment.of(found.row()))
                                .findFirst());
    }

    @Override
    public List<Acknowledgement> acknowledgements(String shipment) {
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, Set.of())) {
            return scan.shipments(List.of(shipment)).stream()
                    .flatMap(facts -> facts.acknowledgements().stream())
                    .toList();
        }
    }

    @Override
    public List<String> claims() {
        return store.read(
                sql ->
                        sql.selectDistinct(CLAIMS_FACT.CLAIM)
                                .from(CLAIMS_FACT)
                                .where(CLAIMS_FACT.SITE_NO.eq(siteNo))
                                .fetch(CLAIMS_FACT.CLAIM));
    }

    @Override
    public List<Rate> rates() {
        return store.read(sql -> ReadRates.of(sql, site));
    }

    @Override
    public Optional<BigDecimal> costElsewhere(String part, Instant by) {
        return store.read(sql -> ReadCosts.elsewhere(sql, site, part, by));
    }

    @Override
    public List<String> matchedCredits() {
        return store.read(
                sql -> {
                    AllPosted posted = new AllPosted(sql);
                    return sql
                            .selectFrom(MATCHES_FACT)
                            .where(MATCHES_FACT.SITE_NO.eq(siteNo))
                            .fetch()
                            .stream()
                            .filter(r -> posted.counts(siteNo, r.getBatch(), r.getLine()))
                            .map(r -> Credit.nameOf(r.getRemittance(), r.getRemittanceLine()))
                            .toList();
                });
    }

    @Override
    public Settlements settlements() {
        return new FindingBook(store).settled(site, now, ReviewSite.NEWEST);
    }

    @Override
    public UnderWay underWay() {
        return store.read(sql -> ReadUnderWay.to(sql, site, now));
    }

    @Override
    public List<CoreAway> coresAway() {
        return new ReadCoresAway(store).at(now);
    }
}
