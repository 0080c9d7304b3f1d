package counterbench.care.store;

import static counterbench.care.store.CareFacts.NOW;
import static counterbench.care.store.CareFacts.core;
import static counterbench.care.store.CareFacts.job;
import static counterbench.care.store.CareFacts.record;
import static counterbench.care.store.CareFacts.removed;
import static counterbench.care.store.CareFacts.use;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.care.ReversalRequest;
import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.journal.Entry;
import counterbench.journal.store.Posted;
import counterbench.people.Person;
import counterbench.people.Pin;
import counterbench.people.Role;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.PinHash;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReverseEntryTest {
    private static final Person ADA = new Person("Ada", Set.of(Role.LEAD));
    private static final Person BEN = new Person("Ben", Set.of(Role.TECHNICIAN));

    private static Entry reverse(Store store, String what, Person person) {
        return new ReverseEntry(store)
                .run(
                        ReversalRequest.of(what, "wrong sheet"),
                        CareFacts.siteOf(store),
                        person,
                        NOW,
                        "reverse " + what);
    }

    private static void refused(Store store, String what, Person person, String why) {
        assertThatThrownBy(() -> reverse(store, what, person))
                .isInstanceOf(Refused.class)
                .hasMessageContaining(why);
    }

    private static boolean counts(Store store, long entry, int line) {
        return store.read(sql -> !Posted.of(sql, 1).isReversed(entry, line));
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_fact_is_reversed_once_and_then_the_rest_of_its_entry(TestStores kind) {
        try (Store store = kind.open()) {
            Site site = CareFacts.setUp(store);
            record(store, site, job("J-1"));
            record(store, site, use("J-1"), use("J-1"), use("J-1"));
            Entry first = reverse(store, "4.2", ADA);
            assertThat(first.reverses()).isEqualTo(4);
            assertThat(counts(store, 4, 1)).isTrue();
            assertThat(counts(store, 4, 2)).isFalse();
            refused(store, "4.2", ADA, "reverse \"4.2\": entry 5 reversed it already; nothing is");
            reverse(store, "4", ADA);
            assertThat(counts(store, 4, 1)).isFalse();
            refused(store, "4", ADA, "entry 6 reversed it already");
            refused(store, "4.1", ADA, "entry 6 reversed it already");
            assertThat(new VerifyJournal(store).run(site, NOW).broken()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void what_is_not_there_or_a_reversal_or_a_site_is_not_reversed(TestStores kind) {
        try (Store store = kind.open()) {
            Site site = CareFacts.setUp(store);
            record(store, site, job("J-1"), use("J-1"));
            reverse(store, "3.2", ADA);
            refused(store, "9", ADA, "site NORTH has no such entry");
            refused(store, "3.3", ADA, "the entry has 2 facts; journal show 3 lists them");
            refused(store, "3.0", ADA, "the entry has 2 facts");
            refused(store, "4", ADA, "a reversal is not reversed; record again what entry 3 said");
            refused(store, "1", ADA, "a site that is set up stays");
            refused(store, "1.3", ADA, "PINs and roles are not taken back but changed");
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void what_other_facts_name_is_not_taken_away(TestStores kind) {
        try (Store store = kind.open()) {
            Site site = CareFacts.setUp(store);
            record(store, site, job("J-1"), removed("C-1", "J-1"));
            record(store, site, core("C-1", "drain-begun"));
            refused(store, "2", ADA, "names campaign \"QM-26-099\", of which no pack is loaded");
            refused(
                    store,
                    "3.1",
                    ADA,
                    "at site NORTH fact 3.2 names job \"J-1\", which is not there; reverse that"
                            + " first");
            refused(store, "3.2", ADA, "fact 4.1 names core \"C-1\", which was never removed");
            reverse(store, "4", ADA);
            reverse(store, "3", ADA);
            reverse(store, "2", ADA);
            assertThat(new VerifyJournal(store).run(site, NOW).broken()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void others_entries_are_the_leads_to_reverse(TestStores kind) {
        try (Store store = kind.open()) {
            Site site = CareFacts.setUp(store);
            var by = new ChangePeople.By(ADA, site, NOW, "person add Ben");
            new ChangePeople(store).add(by, "Ben", BEN.roles(), PinHash.of(new Pin("8642")));
            record(store, site, job("J-1"));
            refused(
                    store,
                    "4",
                    BEN,
                    "reverse \"4\", which Ada recorded: this is for the role lead, and Ben has"
                            + " technician");
            new counterbench.journal.store.JooqJournal(store)
                    .record(
                            counterbench.journal.Draft.of(site, NOW, "Ben", "test", "test"),
                            java.util.List.of(use("J-1")));
            reverse(store, "5", BEN);
            new ChangePeople(store).end(by, "Ben");
            refused(store, "5", BEN, "Ben acts no more");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12.", ".3", "-1", "1.2.3", "12,3", "1234567890123456"})
    void only_an_entry_or_a_fact_is_understood(String typed) {
        assertThatThrownBy(() -> ReversalRequest.of(typed, "why"))
                .hasMessage(
                        "entry \""
                                + typed
                                + "\": it is not the number of an entry or of one of its facts;"
                                + " write 12 for all of entry 12, or 12.3 for its third fact");
    }

    @Test
    void a_reason_has_bounds() {
        assertThatThrownBy(() -> ReversalRequest.of("1", "x".repeat(1_001)))
                .hasMessageContaining("a reason has at most 1000");
    }
}
