package counterbench.journal.store;

import static counterbench.db.generated.Tables.USES_FACT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.facts.TestRows;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.people.store.JooqSites;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.TestSites;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JooqJournalTest {
    private static final Instant NOW = Instant.parse("2026-03-05T20:20:00.123456Z");
    private static final Site NORTH = TestSites.NORTH;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void entries_are_numbered_without_gaps_and_verify(TestStores kind) {
        try (Store store = store(kind)) {
            for (int i = 1; i <= 3; i++) {
                Entry entry =
                        new JooqJournal(store)
                                .record(draft(), List.of(job("J-" + i), use("J-" + i)));
                assertThat(entry.number()).isEqualTo(i);
            }
            Verification.Outcome outcome = store.read(sql -> Verification.of(sql, NORTH));
            assertThat(outcome.broken()).isEmpty();
            assertThat(outcome.entries()).isEqualTo(3);
            assertThat(outcome.facts()).isEqualTo(6);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_refusal_leaves_nothing_behind(TestStores kind) {
        try (Store store = store(kind)) {
            JooqJournal journal = new JooqJournal(store);
            assertThatThrownBy(
                            () ->
                                    journal.record(
                                            draft(),
                                            sql -> {
                                                throw new Refused(
                                                        "kit \"K-1\"", "it is not here", "");
                                            }))
                    .isInstanceOf(Refused.class);
            assertThat(journal.record(draft(), List.of(job("J-1"))).number()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_same_draft_twice_is_one_entry(TestStores kind) {
        try (Store store = store(kind)) {
            JooqJournal journal = new JooqJournal(store);
            Draft draft = draft();
            Entry first = journal.record(draft, List.of(job("J-1")));
            assertThat(journal.record(draft, List.of(job("J-1")))).isEqualTo(first);
            List<Entry> entries = store.read(sql -> EntryReader.newest(sql, NORTH.no(), 10));
            assertThat(entries).hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_fact_changed_behind_the_tools_back_is_found(TestStores kind) {
        try (Store store = store(kind)) {
            JooqJournal journal = new JooqJournal(store);
            journal.record(draft(), List.of(job("J-1")));
            journal.record(draft(), List.of(use("J-1"), use("J-1")));
            journal.record(draft(), List.of(use("J-1")));
            store.run(
                    sql ->
                            sql.update(USES_FACT)
                                    .set(USES_FACT.QUANTITY, new BigDecimal("1.001"))
                                    .where(USES_FACT.LINE.eq(2))
                                    .execute());
            Verification.Outcome outcome = store.read(sql -> Verification.of(sql, NORTH));
            assertThat(outcome.broken()).map(Verification.Broken::number).contains(2L);
        }
    }

    /** H2 and PostgreSQL round what is finer than a microsecond, and the hash cuts it. */
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void an_entry_holds_whose_time_is_finer_than_the_store_keeps(TestStores kind) {
        try (Store store = store(kind)) {
            Instant finer = Instant.parse("2026-03-05T20:20:00.123456789Z");
            FactRow settled =
                    TestRows.row(FactKind.SETTLEMENTS)
                            .with("rule", "torque-count")
                            .with("subject_kind", "job")
                            .with("subject", "J-1")
                            .with("at", finer)
                            .with("reason", "read again")
                            .with("evidence_hash", "00")
                            .with("evidence", "3 of 4 fasteners read");
            new JooqJournal(store)
                    .record(Draft.of(NORTH, finer, "Ada", "test", "test"), List.of(settled));
            Verification.Outcome outcome = store.read(sql -> Verification.of(sql, NORTH));
            assertThat(outcome.broken()).isEmpty();
            assertThat(settled.time("at")).isEqualTo(NOW);
        }
    }

    private static Store store(TestStores kind) {
        Store store = kind.open();
        store.run(sql -> JooqSites.add(sql, NORTH));
        return store;
    }

    private static Draft draft() {
        return Draft.of(NORTH, NOW, "Ada", "test", "test");
    }

    private static FactRow job(String job) {
        return TestRows.row(FactKind.JOBS)
                .with("job", job)
                .with("campaign", "C-1")
                .with("vin", "00000000000000000")
                .with("opened_at", NOW);
    }

    private static FactRow use(String job) {
        return TestRows.row(FactKind.USES)
                .with("job", job)
                .with("part", "P-1")
                .with("quantity", BigDecimal.ONE)
                .with("condition", "new")
                .with("at", NOW);
    }
}
