package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.db.generated.Tables;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.shared.TestSites;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Only jobs that moved loose stock of a part are read for what the store has of it. */
class JobsOfPartsTest {
    private static final Instant AT = Instant.parse("2026-03-05T14:00:00Z");

    private final Site site = TestSites.NORTH;

    private static FactRow job(String job) {
        return FactRow.of(FactKind.JOBS)
                .with("job", job)
                .with("campaign", "QM-26-014")
                .with("vin", "0LKRF8D41RN004526")
                .with("opened_at", AT);
    }

    private static FactRow issue(String job, @Nullable String kit, @Nullable String part) {
        return FactRow.of(FactKind.ISSUES)
                .with("job", job)
                .with("at", AT)
                .with("kit", kit)
                .with("part", part)
                .with("quantity", part == null ? null : BigDecimal.ONE);
    }

    private static FactRow use(String job, String condition, @Nullable String kit) {
        return FactRow.of(FactKind.USES)
                .with("job", job)
                .with("part", "QM-4473")
                .with("quantity", BigDecimal.ONE)
                .with("condition", condition)
                .with("at", AT)
                .with("kit", kit);
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void those_that_took_it_from_the_store_or_put_it_back_there(TestStores kind) {
        try (Store store = kind.open()) {
            store.run(sql -> JooqSites.add(sql, site));
            new JooqJournal(store)
                    .record(
                            Draft.of(site, AT, "Ada", "test", "test"),
                            List.of(
                                    job("took loose"),
                                    issue("took loose", null, "QM-4473"),
                                    job("put back loose"),
                                    use("put back loose", "put-back", null),
                                    job("put back into the kit"),
                                    issue("put back into the kit", "K-1", null),
                                    use("put back into the kit", "put-back", "K-1"),
                                    job("fitted"),
                                    use("fitted", "new", null),
                                    job("took another"),
                                    issue("took another", null, "QM-4474")));

            assertThat(touching(store, "QM-4473"))
                    .containsExactlyInAnyOrder("took loose", "put back loose");
            assertThat(touching(store, "QM-4474")).containsExactly("took another");
            assertThat(touching(store, "QM-4475")).isEmpty();
        }
    }

    private Set<String> touching(Store store, String part) {
        Set<Integer> jobs = store.read(sql -> JobsOfParts.touching(sql, site.no(), Set.of(part)));
        return store.read(
                sql ->
                        sql.selectFrom(Tables.JOB_NAME).fetch().stream()
                                .filter(job -> jobs.contains(job.getJobNo()))
                                .map(job -> job.getJob())
                                .collect(Collectors.toSet()));
    }
}
