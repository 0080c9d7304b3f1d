package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.judgement.Finding;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Compares the review with the second, naive reading of the rules in {@code counterbench.oracle}.
 */
class ReviewSiteTest {
    private static final Instant NOW = Instant.parse("2027-01-05T12:00:00Z");

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,1,600", "H2,2,600", "POSTGRES,3,400"})
    void every_finding_of_a_written_garage_is_found_and_none_besides(
            TestStores kind, long seed, int jobs) {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        Site site = siteOf(garage);
        try (Store store = kind.open()) {
            takeIn(store, garage, site);
            List<Finding> found =
                    new ReviewSite(store).run(site, garage.asOf(), ReviewSite.NEWEST, n -> {});
            Set<String> ours = lines(found, ReviewSiteTest::line);
            Set<String> theirs =
                    lines(garage.judge().findings(), counterbench.oracle.Finding::line);
            assertThat(without(theirs, ours)).as("missing, seed %s", seed).isEmpty();
            assertThat(without(ours, theirs)).as("too many, seed %s", seed).isEmpty();
            assertThat(found).hasSameSizeAs(ours);
        }
    }

    private static <T> Set<String> lines(List<T> findings, Function<T, String> line) {
        return findings.stream().map(line).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    private static void takeIn(Store store, Garage garage, Site site) {
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

    private static String line(Finding f) {
        return String.join(
                "|",
                f.rule().word(),
                f.rule().severity().word(),
                f.site(),
                Objects.toString(f.campaign(), ""),
                f.subject().kind().word(),
                f.subject().name(),
                Objects.toString(f.subject().part(), ""),
                Objects.toString(f.subject().step(), ""),
                Objects.toString(f.month(), ""));
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
