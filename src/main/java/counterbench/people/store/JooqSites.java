package counterbench.people.store;

import static counterbench.db.generated.Tables.JOURNAL_HEAD;
import static counterbench.db.generated.Tables.SITE;

import counterbench.db.generated.tables.records.SiteRecord;
import counterbench.journal.Chain;
import counterbench.shared.Problem;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Sites in the store. */
public final class JooqSites {
    private JooqSites() {}

    /** Every site, by name. */
    public static List<Site> all(DSLContext sql) {
        return sql.selectFrom(SITE).orderBy(SITE.SITE_).fetch(JooqSites::site);
    }

    /** The site of that short name. */
    public static Optional<Site> find(DSLContext sql, String site) {
        return sql.selectFrom(SITE).where(SITE.SITE_.eq(site)).fetchOptional(JooqSites::site);
    }

    /** The refusal of an act that needs a site where none is set up. */
    public static Problem notSetUp(String asked) {
        return new Problem(
                asked,
                "the store is not set up yet",
                "type setup --site NORTH --name \"North garage\" --zone America/Chicago --currency"
                        + " USD --lead \"Ada\", with your own site, zone, currency and name");
    }

    /** The number that the next site gets. */
    public static int nextNo(DSLContext sql) {
        Short last = sql.select(DSL.max(SITE.SITE_NO)).from(SITE).fetchOne(DSL.max(SITE.SITE_NO));
        return last == null ? 1 : last + 1;
    }

    /** Adds a site with an empty journal. */
    public static void add(DSLContext sql, Site site) {
        @Nullable Weight limit = site.shipmentLimit();
        sql.insertInto(SITE)
                .set(SITE.SITE_NO, (short) site.no())
                .set(SITE.SITE_, site.site())
                .set(SITE.NAME, site.name())
                .set(SITE.ZONE, site.zone().getId())
                .set(SITE.CURRENCY, site.currency().getCurrencyCode())
                .set(SITE.JOB_DAYS, site.patience().jobDays())
                .set(SITE.ACKNOWLEDGEMENT_DAYS, site.patience().acknowledgementDays())
                .set(SITE.CREDIT_DAYS, site.patience().creditDays())
                .set(SITE.COMPANY_PREFIX, site.companyPrefix())
                .set(SITE.SHIPMENT_LIMIT, limit == null ? null : limit.amount())
                .set(SITE.SHIPMENT_LIMIT_UNIT, limit == null ? null : limit.unit().symbol())
                .execute();
        sql.insertInto(JOURNAL_HEAD)
                .set(JOURNAL_HEAD.SITE_NO, (short) site.no())
                .set(JOURNAL_HEAD.LAST_NUMBER, 0L)
                .set(JOURNAL_HEAD.LAST_HASH, Chain.START)
                .set(JOURNAL_HEAD.NEXT_JOB_NO, 1)
                .execute();
    }

    /** Writes down the most that a site lets a shipment weigh. */
    static void setLimit(DSLContext sql, Site site) {
        @Nullable Weight limit = site.shipmentLimit();
        sql.update(SITE)
                .set(SITE.SHIPMENT_LIMIT, limit == null ? null : limit.amount())
                .set(SITE.SHIPMENT_LIMIT_UNIT, limit == null ? null : limit.unit().symbol())
                .where(SITE.SITE_NO.eq((short) site.no()))
                .execute();
    }

    private static Site site(SiteRecord r) {
        return new Site(
                r.getSiteNo(),
                r.getSite(),
                r.getName(),
                ZoneId.of(r.getZone()),
                Currency.getInstance(r.getCurrency()),
                new Site.Patience(r.getJobDays(), r.getAcknowledgementDays(), r.getCreditDays()),
                r.getCompanyPrefix(),
                Weight.of(r.getShipmentLimit(), r.getShipmentLimitUnit()).orElse(null));
    }
}
