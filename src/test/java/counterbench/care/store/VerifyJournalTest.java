package counterbench.care.store;

import static counterbench.care.store.CareFacts.NOW;
import static counterbench.care.store.CareFacts.core;
import static counterbench.care.store.CareFacts.job;
import static counterbench.care.store.CareFacts.record;
import static counterbench.care.store.CareFacts.removed;
import static counterbench.care.store.CareFacts.use;
import static counterbench.care.store.CareFacts.withRef;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.journal.Entry;
import counterbench.journal.store.Verification;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.people.NewSite;
import counterbench.people.Person;
import counterbench.people.Pin;
import counterbench.people.Role;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.ChangeSite;
import counterbench.people.store.PinHash;
import counterbench.people.store.SetUpStore;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class VerifyJournalTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_garages_paper_holds(TestStores kind) {
        Garage garage = GarageWriter.write(11, GarageOptions.of(200).scattered(2), folder);
        Instant now = Instant.parse("2027-01-05T12:00:00Z");
        NewSite asked =
                new NewSite(
                        garage.site().name(),
                        "North garage",
                        garage.site().zone().getId(),
                        garage.site().currency(),
                        Site.Patience.USUAL);
        try (Store store = kind.open()) {
            Site site =
                    new SetUpStore(store)
                            .first(asked, "Ada", PinHash.of(new Pin("2468")), now, "")
                            .site();
            garage.packs()
                    .forEach(p -> new LoadPack(store, PoiSheets.files()).run(p, site, "Ada", now));
            ImportReport report =
                    new ImportPaper(store, PoiSheets.files())
                            .run(
                                    new ImportPaper.Request(
                                            garage.sheets(), site, "Ada", now, false, false),
                                    n -> {});
            assertThat(report.problems()).isEmpty();
            Verification.Outcome outcome = new VerifyJournal(store).run(site, now);
            assertThat(outcome.broken()).isEmpty();
            assertThat(outcome.facts()).isGreaterThan(3_000);
        }
    }

    /**
     * Changes behind the program's back, the entry that no longer holds, and what is said of it.
     */
    private static final String CHANGES =
            """
            update uses_fact set quantity = 1.001 where line = 2 | 3 | one of its facts was changed
            update uses_fact set done_by = 'Eve' where line = 2 | 3 | one of its facts was changed
            update uses_fact set line = 7 where line = 2 | 3 | one of its facts was changed
            delete from uses_fact where line = 2 | 3 | with 4 facts and has 3
            delete from entry where number = 3 | 3 | entry 3 is missing
            delete from entry where number = 4 | 4 | should end with entry 4
            update entry set person = 'Eve' where number = 3 | 3 | its hash does not follow
            update entry set recorded_at = recorded_at + interval '1' second where number = 1 | 1 | its hash does not follow
            update uses_fact set k = k - 16777211 where line = 4 | 3 | names job "J-2" and lies under another
            update job_name set job = 'J-9' where job = 'J-2' | 3 | names job "J-2" and lies under another
            update jobs_fact set vin_key = '0BB' where job = 'J-1' | 3 | is looked up under VIN "0BB"
            delete from fact_ref | 3 | has ref "R-1", which is not kept
            delete from kit_link | 3 | names kit "K-1", whose link to the job is missing
            delete from core_tag | 4 | whose tag leads elsewhere
            update site set zone = 'Europe/Paris' | 1 | set the site up as
            """;

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void whatever_is_changed_behind_the_programs_back_is_found(TestStores kind)
            throws SQLException {
        for (String line : CHANGES.lines().toList()) {
            String[] cells = line.split(" \\| ", -1);
            try (Store store = filled(kind)) {
                change(store, cells[0]);
                var broken = new VerifyJournal(store).run(CareFacts.siteOf(store), NOW).broken();
                assertThat(broken).as(line).isPresent();
                assertThat(broken.get().number()).as(line).isEqualTo(Long.parseLong(cells[1]));
                assertThat(broken.get().why()).as(line).contains(cells[2].strip());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void of_a_limit_that_was_set_anew_the_last_fact_holds(TestStores kind) throws SQLException {
        try (Store store = kind.open()) {
            Site site = CareFacts.setUp(store);
            Person ada = new Person("Ada", Set.of(Role.LEAD));
            var by = new ChangePeople.By(ada, site, NOW, "shipment limit");
            ChangeSite change = new ChangeSite(store);
            change.limit(by, Weight.parse("30 kg").orElseThrow());
            change.limit(by, null);
            Entry last = change.limit(by, Weight.parse("66.5 lb").orElseThrow());

            var verify = new VerifyJournal(store);
            assertThat(verify.run(CareFacts.siteOf(store), NOW).broken()).isEmpty();
            change(store, "update site set shipment_limit = 67");
            var broken = verify.run(CareFacts.siteOf(store), NOW).broken();
            assertThat(broken).isPresent();
            assertThat(broken.get().number()).isEqualTo(last.number());
        }
    }

    private static Store filled(TestStores kind) {
        Store store = kind.open();
        Site site = CareFacts.setUp(store);
        record(
                store,
                site,
                job("J-1"),
                withRef(use("J-1"), "R-1"),
                job("J-2"),
                use("J-2").with("kit", "K-1"));
        record(store, site, removed("C-1", "J-2"), core("C-1", "drain-begun"));
        return store;
    }

    private static void change(Store store, String sql) throws SQLException {
        try (Connection connection = store.connect();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"J-3", ""})
    void facts_of_what_is_not_there_are_named(String job) {
        try (Store store = filled(TestStores.H2)) {
            Site site = CareFacts.siteOf(store);
            if (job.isEmpty()) {
                record(store, site, core("C-9", "drain-begun"));
            } else {
                record(store, site, use(job));
            }
            var broken = new VerifyJournal(store).run(site, NOW).broken().orElseThrow();
            assertThat(broken.number()).isEqualTo(5);
            assertThat(broken.why())
                    .isEqualTo(
                            job.isEmpty()
                                    ? "fact 5.1 names core \"C-9\", which was never removed"
                                    : "fact 5.1 names job \"J-3\", which is not there");
        }
    }
}
