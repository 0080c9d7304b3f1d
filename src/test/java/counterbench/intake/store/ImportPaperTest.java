package counterbench.intake.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.intake.ImportReport;
import counterbench.journal.store.Verification;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Currency;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ImportPaperTest {
    private static final Instant NOW = Instant.parse("2027-01-05T12:00:00Z");

    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_garages_paper_is_taken_in_once_however_often_it_is_imported(TestStores kind) {
        Garage garage = GarageWriter.write(7, GarageOptions.of(300).scattered(2), folder);
        try (Store store = kind.open()) {
            Site site = siteOf(garage);
            store.run(sql -> JooqSites.add(sql, site));
            garage.packs()
                    .forEach(p -> new LoadPack(store, PoiSheets.files()).run(p, site, "Ada", NOW));
            ImportReport first = run(store, garage, site);
            assertThat(first.problems()).isEmpty();
            assertThat(first.entries()).hasSize(1);
            ImportReport again = run(store, garage, site);
            assertThat(again.problems()).isEmpty();
            assertThat(again.entries()).isEmpty();
            assertThat(again.counts().values()).allSatisfy(c -> assertThat(c.recorded()).isZero());
            Verification.Outcome outcome = store.read(sql -> Verification.of(sql, site));
            assertThat(outcome.broken()).isEmpty();
        }
    }

    private ImportReport run(Store store, Garage garage, Site site) {
        var request = new ImportPaper.Request(garage.sheets(), site, "Ada", NOW, false, false);
        return new ImportPaper(store, PoiSheets.files()).run(request, n -> {});
    }

    private static Site siteOf(Garage garage) {
        return new Site(
                1,
                garage.site().name(),
                "North garage",
                garage.site().zone(),
                Currency.getInstance(garage.site().currency()),
                Site.Patience.USUAL);
    }
}
