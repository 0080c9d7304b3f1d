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
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Compares the review with the second, naive reading of the rules in {@code counterbench.oracle}.
 */
class ReviewSiteTest {
    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,1,500", "H2,2,300", "POSTGRES,3,300"})
    void every_finding_of_a_written_garage_is_found_and_none_besides(
            TestStores kind, long seed, int jobs) {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        try (Store store = kind.open()) {
            Garages.takeIn(store, garage);
            List<Finding> found =
                    new ReviewSite(store)
                            .run(Garages.site(garage), garage.asOf(), ReviewSite.NEWEST, n -> {});
            Set<String> ours = lines(found, Garages::line);
            Set<String> theirs =
                    lines(garage.judge().findings(), counterbench.oracle.Finding::line);
            assertThat(without(theirs, ours)).as("missing, seed %s", seed).isEmpty();
            assertThat(without(ours, theirs)).as("too many, seed %s", seed).isEmpty();
            assertThat(found).hasSameSizeAs(ours);
        }
    }
}
