package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.judgement.Finding;
import counterbench.oracle.Garage;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.Currency;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Takes written garages into stores, and puts findings into lines that can be compared. */
public final class Garages {
    /** When their paper is recorded: after all that it tells. */
    public static final Instant RECORDED_AT = Instant.parse("2027-01-05T12:00:00Z");

    private Garages() {}

    /** The site of a garage. */
    public static Site site(Garage garage) {
        return new Site(
                1,
                garage.site().name(),
                "North garage",
                garage.site().zone(),
                Currency.getInstance(garage.site().currency()),
                Site.Patience.USUAL);
    }

    /** Sets the site up and loads the packs. */
    public static void setUp(Store store, Garage garage) {
        Site site = site(garage);
        store.run(sql -> JooqSites.add(sql, site));
        garage.packs()
                .forEach(
                        p ->
                                new LoadPack(store, PoiSheets.files())
                                        .run(p, site, "Ada", RECORDED_AT));
    }

    /** Sets the site up and takes all paper in. */
    public static void takeIn(Store store, Garage garage) {
        setUp(store, garage);
        imported(store, garage, garage.sheets());
    }

    /** Imports a file or folder as new; nothing may be refused. */
    public static ImportReport imported(Store store, Garage garage, Path paper) {
        ImportReport report =
                new ImportPaper(store, PoiSheets.files())
                        .run(
                                new ImportPaper.Request(
                                        paper, site(garage), "Ada", RECORDED_AT, false, true),
                                n -> {});
        assertThat(report.problems()).isEmpty();
        return report;
    }

    /** A finding's identity and month, as the second reading writes it. */
    public static String line(Finding f) {
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

    /** Lines, sorted, each once. */
    public static <T> Set<String> lines(Collection<T> findings, Function<T, String> line) {
        return findings.stream().map(line).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What of one set the other does not have. */
    public static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(some);
        return rest;
    }
}
