package counterbench.review.store;

import static counterbench.db.generated.Tables.TOUCHED;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.judgement.Finding;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jooq.DSLContext;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A whole review that is kept in several transactions is kept as one, or not at all. */
class WholeKeepingTest {
    private static final int JOBS = 60;
    private static final int PIECE = 3;
    private static final int ROUNDS = 3;

    /** The version of the rules is the reviewer's own; here any will do that is not the mark. */
    private static final String VERSION = "test";

    @TempDir Path folder;

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void one_that_ends_in_the_middle_is_no_review(TestStores kind) throws IOException {
        Garage garage = GarageWriter.write(31, GarageOptions.of(JOBS), folder);
        try (Store store = kind.open()) {
            Garages.takeIn(store, garage);
            List<Finding> all = run(store, garage).findings();
            Site site = Garages.site(garage);
            store.run(sql -> assertThat(head(sql, site).begin(sql)).isPresent());

            KeptReview review = new KeptReview(store, PIECE);
            assertThat(Kept.read(review, site)).isEmpty();
            Kept again = Kept.review(review, site, garage.asOf());
            assertThat(again.judgedAgain()).isEqualTo(JOBS);
            assertThat(again.findings()).isEqualTo(all);
            assertThat(Kept.read(review, site)).contains(all);
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void of_two_at_once_only_the_one_that_began_last_is_kept(TestStores kind) throws IOException {
        Garage garage = GarageWriter.write(37, GarageOptions.of(JOBS), folder);
        Site site = Garages.site(garage);
        try (Store store = kind.open()) {
            Garages.takeIn(store, garage);
            ReviewHead first = store.read(sql -> head(sql, site));
            ReviewHead held = store.write(sql -> first.begin(sql).orElseThrow());
            assertThat(store.write(held::isHeld)).isTrue();

            List<Finding> all = run(store, garage).findings();

            assertThat(store.write(held::isHeld)).isFalse();
            assertThat(store.write(held::advance)).isFalse();
            assertThat(store.write(first::advance)).as("nobody had begun when it read").isFalse();
            assertThat(Kept.read(new KeptReview(store), site)).contains(all);
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void of_two_who_judge_a_site_for_the_first_time_one_is_told_that_it_was_too_late(
            TestStores kind) throws IOException {
        Garage garage = GarageWriter.write(43, GarageOptions.of(JOBS), folder);
        Site site = Garages.site(garage);
        try (Store store = kind.open()) {
            Garages.takeIn(store, garage);
            ReviewHead none = store.read(sql -> head(sql, site));
            assertThat(store.write(none::advance)).isTrue();
            assertThat(store.write(none::advance)).isFalse();
            assertThat(store.write(none::begin)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void who_reads_while_others_keep_sees_all_findings_or_none(TestStores kind)
            throws IOException, InterruptedException, ExecutionException {
        Garage garage = GarageWriter.write(41, GarageOptions.of(JOBS), folder);
        Site site = Garages.site(garage);
        ExecutorService shells = Executors.newFixedThreadPool(2);
        try (Store store = kind.open()) {
            Garages.takeIn(store, garage);
            List<Finding> all = run(store, garage).findings();
            assertThat(all).hasSizeGreaterThan(10 * PIECE);
            Future<?> one = shells.submit(() -> keepOverAndOver(store, garage, 1));
            Future<?> other = shells.submit(() -> keepOverAndOver(store, garage, 1 + ROUNDS));
            KeptReview review = new KeptReview(store, PIECE);
            int whole = 0;
            while (!one.isDone() || !other.isDone()) {
                var kept = Kept.read(review, site);
                kept.ifPresent(findings -> assertThat(findings).isEqualTo(all));
                whole += kept.isPresent() ? 1 : 0;
            }
            one.get();
            other.get();
            assertThat(whole).as("readings of a whole review").isPositive();
            assertThat(run(store, garage).findings()).isEqualTo(all);
        } finally {
            shells.shutdownNow();
            assertThat(shells.awaitTermination(1, TimeUnit.MINUTES)).isTrue();
        }
    }

    private static void keepOverAndOver(Store store, Garage garage, int firstNumber) {
        for (int i = 0; i < ROUNDS; i++) {
            touchAll(store, Garages.site(garage), 1_000_000L + firstNumber + i);
            try {
                run(store, garage);
            } catch (Refused e) {
                assertThat(e).hasMessageContaining("other shells review it at the same time");
            }
        }
    }

    private static void touchAll(Store store, Site site, long number) {
        store.run(
                sql ->
                        sql.insertInto(TOUCHED)
                                .set(TOUCHED.SITE_NO, (short) site.no())
                                .set(TOUCHED.NUMBER, number)
                                .set(TOUCHED.WHAT, "all")
                                .set(TOUCHED.NAME, "")
                                .execute());
    }

    private static Kept run(Store store, Garage garage) {
        return Kept.review(new KeptReview(store, PIECE), Garages.site(garage), garage.asOf());
    }

    private static ReviewHead head(DSLContext sql, Site site) {
        return ReviewHead.read(sql, site.no(), VERSION);
    }
}
