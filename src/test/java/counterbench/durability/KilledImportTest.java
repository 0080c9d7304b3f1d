package counterbench.durability;

import static counterbench.db.generated.Tables.STAGING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.Verification;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.people.store.JooqSites;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Currency;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An import whose process dies leaves nothing to be seen, and the next one clears it away. */
class KilledImportTest {
    private static final int KILLS = 2;

    @TempDir Path folder;

    private final long seed = System.nanoTime();
    private final Random random = new Random(seed);

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void nothing_is_seen_of_it_and_the_next_one_clears_it(TestStores kind) throws Exception {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(400).scattered(2), folder);
        Site site = siteOf(garage);
        StoreAddress address = kind.address();
        long packs = setUp(address, garage, site);
        for (int kill = 1; kill <= KILLS; kill++) {
            killWhileImporting(address, garage);
            try (Store store = TestStores.open(address)) {
                Verification.Outcome outcome =
                        store.readSnapshot(sql -> Verification.of(sql, site));
                assertThat(outcome.broken()).as("seed " + seed).isEmpty();
                assertThat(outcome.entries()).as("seed " + seed).isEqualTo(packs);
                assertThatThrownBy(() -> importNow(store, garage, site, Instant.now()))
                        .isInstanceOf(Refused.class)
                        .hasMessageContaining("is importing there just now");
            }
            makeLeaseOld(address);
        }
        try (Store store = TestStores.open(address)) {
            ImportReport report = importNow(store, garage, site, Instant.now());
            assertThat(report.problems()).isEmpty();
            Verification.Outcome outcome = store.readSnapshot(sql -> Verification.of(sql, site));
            assertThat(outcome.broken()).isEmpty();
            assertThat(rows(store)).as("seed " + seed).isEqualTo(outcome.facts());
        }
    }

    private static long setUp(StoreAddress address, Garage garage, Site site) {
        Instant now = Instant.now();
        try (Store store = TestStores.open(address)) {
            store.run(sql -> JooqSites.add(sql, site));
            garage.packs()
                    .forEach(p -> new LoadPack(store, PoiSheets.files()).run(p, site, "Ada", now));
        }
        return garage.packs().size();
    }

    /** Late enough that rows are staged, and before the import can be done. */
    private void killWhileImporting(StoreAddress address, Garage garage) throws Exception {
        int rows = 3_000 + random.nextInt(3_000);
        try (VictimProcess victim = VictimProcess.start(address, garage.sheets().toString()).go()) {
            for (int i = 0; i < rows; i++) {
                assertThat(victim.next()).isNotEqualTo("done");
            }
            assertThat(victim.kill()).doesNotContain("done");
        }
    }

    /** As if more than two minutes had gone by. */
    private static void makeLeaseOld(StoreAddress address) {
        try (Store store = TestStores.open(address)) {
            store.run(
                    sql ->
                            sql.update(STAGING)
                                    .set(
                                            STAGING.HEARTBEAT,
                                            Instant.now().minus(Duration.ofMinutes(3)))
                                    .where(STAGING.SITE_NO.eq((short) 1))
                                    .execute());
        }
    }

    private static ImportReport importNow(Store store, Garage garage, Site site, Instant now) {
        var request = new ImportPaper.Request(garage.sheets(), site, "Ada", now, false, false);
        return new ImportPaper(store, PoiSheets.files()).run(request, n -> {});
    }

    private static long rows(Store store) {
        return store.read(
                sql ->
                        FactTable.values().stream()
                                .mapToLong(table -> sql.fetchCount(table.table()))
                                .sum());
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
