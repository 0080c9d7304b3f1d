package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.oracle.Garage;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.time.Instant;
import java.util.Currency;

/** A written garage in a store. */
final class TakenIn {
    private static final Instant NOW = Instant.parse("2027-01-05T12:00:00Z");

    private TakenIn() {}

    static Site site(Garage garage) {
        return new Site(
                1,
                garage.site().name(),
                "North garage",
                garage.site().zone(),
                Currency.getInstance(garage.site().currency()),
                Site.Patience.USUAL);
    }

    static void run(Store store, Garage garage, Site site) {
        store.run(sql -> JooqSites.add(sql, site));
        garage.packs()
                .forEach(p -> new LoadPack(store, PoiSheets.files()).run(p, site, "Ada", NOW));
        ImportReport report =
                new ImportPaper(store, PoiSheets.files())
                        .run(
                                new ImportPaper.Request(
                                        garage.sheets(), site, "Ada", NOW, false, false),
                                n -> {});
        assertThat(report.problems()).isEmpty();
    }
}
