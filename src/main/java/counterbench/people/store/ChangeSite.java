package counterbench.people.store;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.people.Role;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import java.util.List;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** What a lead changes of a site that is set up. */
public final class ChangeSite {
    /** What the journal calls a change of the limit. */
    private static final String KIND = "shipment limit";

    private final JooqJournal journal;

    public ChangeSite(Store store) {
        this.journal = new JooqJournal(store);
    }

    /**
     * Sets the most that the site lets a shipment weigh. What has left stays as it was judged then.
     *
     * @param limit null to let shipments of any weight go
     * @throws Refused if the person is no lead, or that is the limit already
     */
    public Entry limit(ChangePeople.By by, @Nullable Weight limit) {
        return journal.record(
                by.draft(KIND),
                sql -> {
                    JooqPeople.mustActAs(sql, by.person(), Role.LEAD, KIND);
                    Site changed = limited(sql, by.site().site(), limit);
                    JooqSites.setLimit(sql, changed);
                    return List.of(PeopleFacts.site(changed));
                });
    }

    private static Site limited(DSLContext sql, String name, @Nullable Weight limit) {
        Site site = JooqSites.find(sql, name).orElseThrow();
        if (isSame(site.shipmentLimit(), limit)) {
            throw new Refused(
                    KIND + " of site \"" + name + "\"",
                    limit == null ? "it sets none" : "it is " + limit + " already",
                    "nothing is left to do");
        }
        return site.limited(limit);
    }

    private static boolean isSame(@Nullable Weight before, @Nullable Weight now) {
        if (before == null || now == null) {
            return before == null && now == null;
        }
        return !before.exceeds(now) && !now.exceeds(before);
    }
}
