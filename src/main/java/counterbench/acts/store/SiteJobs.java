package counterbench.acts.store;

import counterbench.db.Store;
import counterbench.db.generated.Tables;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Site;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** The jobs of a site as they are recorded. */
public final class SiteJobs {
    private final Store store;
    private final Site site;

    public SiteJobs(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** Every job, in the order in which they were opened. */
    public List<FactRow> all() {
        return store.read(
                sql ->
                        KeyedRows.read(
                                        sql,
                                        new AllPosted(sql),
                                        FactKind.JOBS,
                                        Tables.JOBS_FACT.SITE_NO.eq((short) site.no()))
                                .stream()
                                .map(KeyedRows.AtSite::row)
                                .sorted(
                                        Comparator.comparing(
                                                        (FactRow row) ->
                                                                Objects.requireNonNull(
                                                                        row.time("opened_at")))
                                                .thenComparing(
                                                        row ->
                                                                Objects.requireNonNull(
                                                                        row.text("job"))))
                                .toList());
    }
}
