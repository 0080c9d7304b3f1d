package counterbench.acts.store;

import static counterbench.db.generated.Tables.CONTACTS_FACT;
import static counterbench.db.generated.Tables.VEHICLES_FACT;

import counterbench.acts.CampaignNeed;
import counterbench.campaign.Condition;
import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Vehicle;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.AllPosted;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jooq.DSLContext;

/**
 * A campaign's listed vehicles and which of them may still come: those that no site has done or
 * found not to need it, and that the last contact does not call unreachable, scrapped or exported.
 */
final class OpenVehicles {
    private static final Set<String> DONE = Set.of("completed", "not-needed");
    private static final Set<String> CANNOT_COME = Set.of("unreachable", "scrapped", "exported");

    private final int listed;
    private final int done;
    private final Map<String, Map<String, String>> open;

    private OpenVehicles(int listed, int done, Map<String, Map<String, String>> open) {
        this.listed = listed;
        this.done = done;
        this.open = open;
    }

    /**
     * Reads them.
     *
     * @param jobs the campaign's jobs at all sites
     */
    static OpenVehicles read(
            DSLContext sql, AllPosted posted, String campaign, Collection<KeyedRows.AtSite> jobs) {
        Map<String, Map<String, String>> open = new TreeMap<>();
        KeyedRows.read(sql, posted, FactKind.VEHICLES, VEHICLES_FACT.CAMPAIGN.eq(campaign))
                .forEach(
                        v ->
                                open.put(
                                        vin(v.row()),
                                        Vehicle.attributesOf(v.row().text("attributes"))));
        int listed = open.size();
        jobs.stream()
                .map(KeyedRows.AtSite::row)
                .filter(job -> DONE.contains(Objects.toString(job.text("outcome"), "")))
                .forEach(job -> open.remove(vin(job)));
        int done = listed - open.size();
        open.keySet().removeAll(cannotCome(sql, posted, campaign));
        return new OpenVehicles(listed, done, open);
    }

    private static Set<String> cannotCome(DSLContext sql, AllPosted posted, String campaign) {
        List<KeyedRows.AtSite> contacts =
                KeyedRows.read(sql, posted, FactKind.CONTACTS, CONTACTS_FACT.CAMPAIGN.eq(campaign));
        Map<String, FactRow> last = new HashMap<>();
        contacts.forEach(c -> last.merge(vin(c.row()), c.row(), OpenVehicles::later));
        Set<String> vins = new HashSet<>();
        last.forEach(
                (vin, contact) -> {
                    if (CANNOT_COME.contains(Objects.toString(contact.text("outcome"), ""))) {
                        vins.add(vin);
                    }
                });
        return vins;
    }

    private static FactRow later(FactRow a, FactRow b) {
        Instant before = Objects.requireNonNull(a.time("at"));
        return before.isAfter(Objects.requireNonNull(b.time("at"))) ? a : b;
    }

    private static String vin(FactRow row) {
        return Vehicle.compared(Objects.requireNonNull(row.text("vin")));
    }

    CampaignNeed.Vehicles counts() {
        return new CampaignNeed.Vehicles(listed, done, listed - done - open.size());
    }

    /** How many open vehicles a condition holds for, as far as the list tells. */
    int needing(Condition when) {
        return (int) open.values().stream().filter(a -> when.on(a) == Holds.YES).count();
    }
}
