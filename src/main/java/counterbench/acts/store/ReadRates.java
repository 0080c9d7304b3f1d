package counterbench.acts.store;

import static counterbench.db.generated.Tables.RATES_FACT;

import counterbench.claims.draft.Rate;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;

/** Reads a site's labour rates. */
final class ReadRates {
    private ReadRates() {}

    static List<Rate> of(DSLContext sql, Site site) {
        AllPosted posted = new AllPosted(sql);
        List<Rate> rates = new ArrayList<>();
        sql.selectFrom(RATES_FACT)
                .where(RATES_FACT.SITE_NO.eq((short) site.no()))
                .orderBy(RATES_FACT.VALID_FROM, RATES_FACT.BATCH, RATES_FACT.LINE)
                .forEach(
                        r -> {
                            if (posted.counts(site.no(), r.getBatch(), r.getLine())) {
                                rates.add(new Rate(r.getAmount(), r.getValidFrom()));
                            }
                        });
        return rates;
    }
}
