package counterbench.care.store;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.facts.TestRows;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.people.NewSite;
import counterbench.people.Pin;
import counterbench.people.store.PinHash;
import counterbench.people.store.SetUpStore;
import counterbench.people.store.StaffBook;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

/** A small store for tests: a site, its lead Ada, a pack, and facts to put in. */
final class CareFacts {
    static final Instant NOW = Instant.parse("2026-03-05T20:20:00.123456Z");
    static final String CAMPAIGN = "QM-26-099";

    private static final NewSite NORTH =
            new NewSite("NORTH", "North garage", "America/Chicago", "USD", Site.Patience.USUAL);
    private static final String PACK =
            "campaign: QM-26-099\ntitle: Test\nrevision: A\nin-force-from: 2026-02-02\n";

    private CareFacts() {}

    /** Entry 1 sets up the site, entry 2 loads a pack. */
    static Site setUp(Store store) {
        Site site =
                new SetUpStore(store)
                        .first(NORTH, "Ada", PinHash.of(new Pin("2468")), NOW, "setup")
                        .site();
        record(store, site, pack());
        return site;
    }

    static Site siteOf(Store store) {
        return new StaffBook(store).sites().get(0);
    }

    static Entry record(Store store, Site site, FactRow... rows) {
        return new JooqJournal(store)
                .record(Draft.of(site, NOW, "Ada", "test", "test"), List.of(rows));
    }

    private static FactRow pack() {
        return new FactRow(
                FactKind.PACKS, Arrays.asList(CAMPAIGN, "A", "QM-26-099-A.yaml", PACK), null);
    }

    static FactRow job(String job) {
        return TestRows.row(FactKind.JOBS)
                .with("job", job)
                .with("campaign", CAMPAIGN)
                .with("vin", "0aa aaaaaaaaaaaaaa")
                .with("opened_at", NOW);
    }

    static FactRow use(String job) {
        return TestRows.row(FactKind.USES)
                .with("job", job)
                .with("part", "QM-1")
                .with("quantity", BigDecimal.ONE)
                .with("condition", "new")
                .with("at", NOW);
    }

    static FactRow core(String core, String event) {
        return TestRows.row(FactKind.CORES).with("core", core).with("event", event).with("at", NOW);
    }

    static FactRow removed(String core, String job) {
        return core(core, "removed").with("job", job).with("serial", "S-" + core);
    }

    static FactRow withRef(FactRow row, String ref) {
        return new FactRow(row.kind(), row.values(), ref);
    }
}
