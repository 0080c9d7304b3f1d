package counterbench.review.store;

import static counterbench.review.store.Garages.lines;
import static counterbench.review.store.Garages.without;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.judgement.Finding;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.shared.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kept review says what a full one says, whatever came since the last time. */
class KeptReviewTest {
    /** Sheets in the order in which their paper comes in; what one names has come before. */
    private static final List<List<String>> DELIVERIES =
            List.of(
                    List.of("people", "parts", "instruments", "rates", "vehicles", "jobs"),
                    List.of("kits", "issues", "cores", "uses-1", "receipts"),
                    List.of("uses-2", "marks-1", "shipments"),
                    List.of("moves", "counts", "calibrations", "marks-2"),
                    List.of("acknowledgements", "claims"),
                    List.of("credits", "orders", "contacts"));

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,11,90", "POSTGRES,13,60"})
    void it_equals_a_full_review_after_every_delivery(TestStores kind, long seed, int jobs)
            throws IOException {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        try (Store store = kind.open()) {
            Garages.setUp(store, garage);
            Instant now = garage.asOf().minus(Duration.ofDays(40));
            for (List<String> delivery : DELIVERIES) {
                for (String name : delivery) {
                    Garages.imported(store, garage, folderOf(garage, name));
                    compare(store, garage, now, name + ", seed " + seed);
                }
                now = now.plus(Duration.ofDays(7));
                compare(store, garage, now, delivery + " a week later, seed " + seed);
            }
            assertThat(new KeptReview(store).run(Garages.site(garage), now, n -> {}).judgedAgain())
                    .as("nothing has come since")
                    .isZero();
        }
    }

    private static void compare(Store store, Garage garage, Instant now, String when) {
        Site site = Garages.site(garage);
        List<Finding> kept = new KeptReview(store).run(site, now, n -> {}).findings();
        Set<String> ours = lines(kept, KeptReviewTest::whole);
        Set<String> full =
                lines(
                        new ReviewSite(store).run(site, now, ReviewSite.NEWEST, n -> {}),
                        KeptReviewTest::whole);
        assertThat(without(full, ours)).as("missing after %s", when).isEmpty();
        assertThat(without(ours, full)).as("too many after %s", when).isEmpty();
        assertThat(kept).hasSameSizeAs(ours);
    }

    private static String whole(Finding finding) {
        return Garages.line(finding) + "|" + finding.evidence();
    }

    /** A folder with only the files of that name, so that they come in together. */
    private Path folderOf(Garage garage, String name) throws IOException {
        Path only = Files.createDirectory(folder.resolve("only-" + name));
        try (Stream<Path> files = Files.list(garage.sheets())) {
            for (Path file : files.filter(f -> isOf(f, name)).toList()) {
                Files.copy(file, only.resolve(file.getFileName()));
            }
        }
        return only;
    }

    private static boolean isOf(Path file, String name) {
        String own = String.valueOf(file.getFileName());
        return own.equals(name + ".csv") || own.startsWith(name + "-");
    }
}
