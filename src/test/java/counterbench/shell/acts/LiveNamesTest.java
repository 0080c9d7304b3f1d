package counterbench.shell.acts;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shared.StoreUnusable;
import counterbench.shell.Completing;
import counterbench.shell.Larkmere;
import counterbench.shell.Proposals;
import counterbench.shell.review.ReviewCommand;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LiveNamesTest {
    private static List<String> offered(Proposals names, String... words) {
        String begun = words[words.length - 1];
        return names.apply(new Completing(Arrays.asList(words), begun, Optional.of("NORTH")));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void names_of_the_site_are_offered_as_they_are_now(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            LiveNames names = new LiveNames(larkmere::store);

            assertThat(offered(names.openJobs(), ""))
                    .containsExactlyInAnyOrder("N-155", "N-168", "N-169");
            assertThat(offered(names.jobs(), "N-10")).hasSize(9);
            assertThat(offered(names.kitsOnShelf(), "FP")).containsExactly("FP-1052", "FP-1053");
            assertThat(offered(names.kits(), "--site", "SOUTH", "HV1-031"))
                    .contains("HV1-0313")
                    .doesNotContain("HV1-0310");
            assertThat(offered(names.kitsUnderWay(), "--site", "SOUTH", "RD"))
                    .containsExactly("RD-0548");
            assertThat(offered(names.campaigns(), "HB"))
                    .containsExactly("HB-0417", "HB-0429", "HB-0433");
            assertThat(offered(names.parts(), "HB-301"))
                    .contains("HB-3011", "HB-3016")
                    .doesNotContain("HB-3010-K");
            assertThat(offered(names.kitParts(), "TK")).containsExactly("TK-810-K", "TK-820-K");
            assertThat(offered(names.cores(), "NC-000")).hasSize(9);
            assertThat(offered(names.sites(), "")).containsExactly("NORTH", "SOUTH");
            assertThat(offered(names.people(), "")).contains("Hal", "Otis");
            assertThat(offered(names.findings(), "")).isEmpty();
            larkmere.shellOf(Larkmere.HAL, new ReviewCommand(larkmere::store, larkmere.sites()))
                    .line("review");
            assertThat(offered(names.findings(), "F-")).hasSizeBetween(40, 200);
        }
    }

    @Test
    void where_the_store_cannot_be_asked_nothing_is_offered() {
        LiveNames names =
                new LiveNames(
                        () -> {
                            throw new StoreUnusable("gone");
                        });

        assertThat(offered(names.openJobs(), "")).isEmpty();
        assertThat(offered(names.people(), "")).isEmpty();
        assertThat(offered(names.findings(), "")).isEmpty();
    }
}
