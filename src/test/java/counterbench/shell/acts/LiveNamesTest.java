package counterbench.shell.acts;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shared.StoreUnusable;
import counterbench.shell.Completing;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Proposals;
import counterbench.shell.bench.FitCommand;
import counterbench.shell.bench.JobCompleteCommand;
import counterbench.shell.counter.KitIssueCommand;
import counterbench.shell.rack.CoreSendCommand;
import counterbench.shell.rack.DrainEndCommand;
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
            larkmere.shellOf(Larkmere.HAL, new CoreSendCommand(larkmere::store, larkmere.sites()))
                    .line("core send NC-0072 --to SOUTH");
            assertThat(offered(names.coresUnderWay(), "--site", "SOUTH", "NC"))
                    .containsExactly("NC-0072");
            assertThat(offered(names.coresUnderWay(), "NC")).isEmpty();
            assertThat(offered(names.sites(), "")).containsExactly("NORTH", "SOUTH");
            assertThat(offered(names.people(), "")).contains("Hal", "Otis");
            assertThat(offered(names.findings(), "")).isEmpty();
            larkmere.shellOf(Larkmere.HAL, new ReviewCommand(larkmere::store, larkmere.sites()))
                    .line("review");
            assertThat(offered(names.findings(), "F-")).hasSizeBetween(40, 200);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_a_job_has_and_lacks_is_offered_behind_its_name(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            LiveNames names = new LiveNames(larkmere::store);

            assertThat(offered(names.partsOnBench(), "N-168", ""))
                    .containsExactly("HB-5121", "HB-5122", "HB-5123", "HB-5124", "HB-5125");
            assertThat(offered(names.partsOnBench(), "N-168", "HB-5125"))
                    .containsExactly("HB-5125");
            assertThat(offered(names.partsOnBench(), "N-167", "")).doesNotContain("HB-3011");
            assertThat(offered(names.partsOfJob(), "N-155", ""))
                    .as("a manual gearbox needs no ring for the lever, and plugs go on the core")
                    .containsExactly("HB-3011", "HB-3012", "HB-3013", "HB-3015");
            assertThat(offered(names.kitsOfJob(), "N-168", "RD"))
                    .containsExactly("RD-0544", "RD-0545");
            assertThat(offered(names.stepsOfJob(), "N-169", ""))
                    .as("what is open comes first")
                    .startsWith("mount", "screw")
                    .endsWith("safe", "cold", "relief");
            assertThat(offered(names.stepsOfJob(), "N-155", "lever")).isEmpty();
            assertThat(offered(names.fastenersOfStep(), "N-169", "mount", ""))
                    .containsExactly("1", "2", "3");
            assertThat(offered(names.instruments(), "TW")).containsExactly("TW-1", "TW-2");
            assertThat(offered(names.coresDraining(), "")).containsExactly("NC-0075");
            assertThat(offered(names.stepsOfJob(), "N-999", "")).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_recorded_is_offered_or_not_offered_at_once(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            LiveNames names = new LiveNames(larkmere::store);
            FakeShell otis =
                    larkmere.shellOf(
                            Larkmere.OTIS,
                            new KitIssueCommand(larkmere::store, larkmere.sites()),
                            new FitCommand(larkmere::store, larkmere.sites()),
                            new DrainEndCommand(larkmere::store, larkmere.sites()),
                            new JobCompleteCommand(larkmere::store, larkmere.sites()));

            otis.line("kit issue FP-1052 N-155");
            assertThat(offered(names.kitsOnShelf(), "FP")).containsExactly("FP-1053");
            assertThat(offered(names.kitsOfJob(), "N-155", "")).contains("FP-1052");
            otis.line("fit N-169 HB-3011");
            assertThat(offered(names.partsOnBench(), "N-169", "HB-301"))
                    .containsExactly("HB-3012", "HB-3013", "HB-3014", "HB-3015", "HB-3016");
            otis.line("drain end NC-0075");
            assertThat(offered(names.coresDraining(), "")).isEmpty();
            otis.line("job complete N-169");
            assertThat(offered(names.openJobs(), "")).containsExactlyInAnyOrder("N-155", "N-168");
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
