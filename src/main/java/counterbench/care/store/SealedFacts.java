package counterbench.care.store;

import static counterbench.db.generated.Tables.ENTRY;

import counterbench.db.Store;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.SealReader;
import counterbench.shared.Site;
import java.time.YearMonth;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** In which sealed months facts of an entry are booked. */
public final class SealedFacts {
    private final Store store;
    private final Site site;

    public SealedFacts(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The sealed months of an entry's facts, each with the month that is open for it now. */
    public SortedMap<YearMonth, YearMonth> of(long entry) {
        return store.read(sql -> read(sql, entry));
    }

    private SortedMap<YearMonth, YearMonth> read(DSLContext sql, long entry) {
        SealedMonths sealed = SealReader.of(sql, site.no());
        SortedMap<YearMonth, YearMonth> months = new TreeMap<>();
        if (sealed.last().isEmpty()) {
            return months;
        }
        var batch =
                DSL.select(ENTRY.BATCH)
                        .from(ENTRY)
                        .where(ENTRY.SITE_NO.eq((short) site.no()), ENTRY.NUMBER.eq(entry));
        for (FactTable table : FactTable.values()) {
            sql
                    .selectDistinct(table.booked())
                    .from(table.table())
                    .where(
                            table.siteNo().eq((short) site.no()),
                            table.batch().in(batch),
                            table.booked().isNotNull())
                    .fetch(table.booked())
                    .stream()
                    .map(Objects::requireNonNull)
                    .map(booked -> YearMonth.of(booked / 100, booked % 100))
                    .filter(month -> sealed.of(month).isPresent())
                    .forEach(month -> months.put(month, sealed.firstOpen(month)));
        }
        return months;
    }
}
