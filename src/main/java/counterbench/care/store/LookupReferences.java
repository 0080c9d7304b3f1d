package counterbench.care.store;

import static counterbench.db.generated.Tables.FACT_REF;
import static counterbench.db.generated.Tables.PACKS_FACT;

import counterbench.campaign.Vehicle;
import counterbench.facts.FactKind;
import counterbench.journal.store.FactTable;
import counterbench.shared.Address;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

/**
 * Holds facts against what the store keeps beside them to find them by: VINs as compared, the
 * paper's own numbers, and the site itself.
 */
final class LookupReferences {
    private final CountingRows rows;
    private final FirstBroken broken;
    private @Nullable Record site;

    LookupReferences(CountingRows rows, FirstBroken broken) {
        this.rows = rows;
        this.broken = broken;
    }

    void check() {
        for (FactKind kind : List.of(FactKind.JOBS, FactKind.VEHICLES, FactKind.CREDITS)) {
            rows.each(kind, row -> checkVin(FactTable.of(kind), row), "vin");
        }
        rows.each(
                FactKind.SITES,
                this::takeSite,
                "site",
                "name",
                "zone",
                "currency",
                "job_days",
                "acknowledgement_days",
                "credit_days",
                "company_prefix",
                "shipment_limit",
                "shipment_limit_unit");
        if (site != null) {
            checkSite(site);
        }
        checkRefs();
    }

    /** Campaigns of which a pack counts, loaded at whatever site. */
    static Set<String> campaigns(CountingRows rows) {
        Set<String> campaigns = new HashSet<>();
        rows.sql()
                .select(PACKS_FACT.SITE_NO, PACKS_FACT.BATCH, PACKS_FACT.LINE, PACKS_FACT.CAMPAIGN)
                .from(PACKS_FACT)
                .forEach(
                        r -> {
                            if (rows.counting().counts(r.value1(), r.value2(), r.value3())) {
                                campaigns.add(r.value4());
                            }
                        });
        return campaigns;
    }

    private void checkVin(FactTable table, Record row) {
        String vin = row.get(table.text("vin"));
        String key = row.get(Objects.requireNonNull(table.vinKey()));
        String wanted = vin == null ? null : Vehicle.compared(vin);
        if (!Objects.equals(key, wanted)) {
            note(table, row, "is looked up under VIN \"" + key + "\", and says \"" + vin + "\"");
        }
    }

    /** A site's limit is set anew by a further row, and the last one holds. */
    private void takeSite(Record row) {
        if (site == null || address(row).compareTo(address(site)) > 0) {
            site = row;
        }
    }

    private Address address(Record row) {
        FactTable table = FactTable.of(FactKind.SITES);
        return broken.address(row.get(table.batch()), row.get(table.line()));
    }

    private void checkSite(Record row) {
        FactTable table = FactTable.of(FactKind.SITES);
        Site now = rows.site();
        Site.Patience patience = now.patience();
        @Nullable Weight limit = now.shipmentLimit();
        List<@Nullable Object> held =
                Arrays.asList(
                        now.site(),
                        now.name(),
                        now.zone().getId(),
                        now.currency().getCurrencyCode(),
                        (long) patience.jobDays(),
                        (long) patience.acknowledgementDays(),
                        (long) patience.creditDays(),
                        now.companyPrefix(),
                        limit == null ? null : limit.amount(),
                        limit == null ? null : limit.unit().symbol());
        List<Object> said = table.columns().stream().<Object>map(f -> row.get(f)).toList();
        if (!said.equals(held)) {
            note(table, row, "set the site up as " + said + ", and the store has " + held);
        }
    }

    private void checkRefs() {
        short siteNo = (short) rows.site().no();
        for (FactTable table : FactTable.values()) {
            if (!table.kind().takesRef()) {
                continue;
            }
            rows.sql()
                    .select(table.batch(), table.line(), table.ref())
                    .from(table.table())
                    .leftJoin(FACT_REF)
                    .on(
                            FACT_REF.SITE_NO.eq(table.siteNo()),
                            FACT_REF.KIND.eq(table.kind().word()),
                            FACT_REF.REF.eq(table.ref()),
                            FACT_REF.BATCH.eq(table.batch()),
                            FACT_REF.LINE.eq(table.line()))
                    .where(
                            table.siteNo().eq(siteNo),
                            table.ref().isNotNull(),
                            FACT_REF.BATCH.isNull())
                    .forEach(row -> noteRef(table, row));
        }
    }

    private void noteRef(FactTable table, Record row) {
        if (rows.counting()
                .counts(rows.site().no(), row.get(table.batch()), row.get(table.line()))) {
            note(table, row, "has ref \"" + row.get(table.ref()) + "\", which is not kept");
        }
    }

    private void note(FactTable table, Record row, String why) {
        broken.note(row.get(table.batch()), row.get(table.line()), why);
    }
}
