package counterbench.durability;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.Verification;
import counterbench.people.store.JooqSites;
import counterbench.shared.TestSites;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * An acknowledged entry survives the death of the process that recorded it, twenty times at random
 * moments on each kind of store. The embedded store waits some seconds for a dead process's lock to
 * grow old, so several stores are killed side by side.
 */
class KilledRecorderTest {
    private static final int STORES = 4;
    private static final int KILLS_EACH = 5;
    private static final int MOST_ACTS = 25;
    private static final int LONGEST_NANOS = 4_000_000;

    private final long seed = System.nanoTime();

    @Test
    void the_embedded_store_writes_over_nothing_of_the_last_week() {
        try (Store store = TestStores.open(TestStores.H2.address())) {
            String kept =
                    store.read(
                            sql ->
                                    String.valueOf(
                                            sql.fetchValue(
                                                    "select setting_value from"
                                                            + " information_schema.settings where"
                                                            + " setting_name = 'RETENTION_TIME'")));
            assertThat(Duration.ofMillis(Long.parseLong(kept))).isEqualTo(Duration.ofDays(7));
        }
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void every_acknowledged_entry_is_found_whole(TestStores kind) throws Exception {
        ExecutorService side = Executors.newFixedThreadPool(STORES);
        try {
            List<Future<Integer>> acknowledged = new ArrayList<>();
            for (int i = 0; i < STORES; i++) {
                Random random = new Random(seed + i);
                StoreAddress address = kind.address();
                acknowledged.add(side.submit(() -> killAgainAndAgain(address, random)));
            }
            for (Future<Integer> entries : acknowledged) {
                assertThat(entries.get()).isGreaterThanOrEqualTo(KILLS_EACH);
            }
        } finally {
            side.shutdownNow();
        }
    }

    private int killAgainAndAgain(StoreAddress address, Random random) throws Exception {
        try (Store store = TestStores.open(address)) {
            store.run(sql -> JooqSites.add(sql, TestSites.NORTH));
        }
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 1; kill <= KILLS_EACH; kill++) {
            try (VictimProcess victim = VictimProcess.start(address).go()) {
                acknowledged.addAll(killAtRandom(victim, random));
            }
        }
        check(address, acknowledged, "seed " + seed);
        return acknowledged.size();
    }

    private static List<String> killAtRandom(VictimProcess victim, Random random) throws Exception {
        List<String> said = new ArrayList<>();
        int acts = 1 + random.nextInt(MOST_ACTS);
        while (said.size() < acts) {
            String line = victim.next();
            assertThat(line).as("the victim died by itself").isNotNull();
            said.add(line);
        }
        long until = System.nanoTime() + random.nextInt(LONGEST_NANOS);
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        said.addAll(victim.kill());
        return said;
    }

    private static void check(StoreAddress address, List<String> acknowledged, String when) {
        try (Store store = TestStores.open(address)) {
            Verification.Outcome outcome =
                    store.readSnapshot(sql -> Verification.of(sql, TestSites.NORTH));
            assertThat(outcome.broken()).as(when).isEmpty();
            assertThat(outcome.facts()).as(when).isEqualTo(4 * outcome.entries());
            Set<String> found =
                    store.read(sql -> EntryReader.newest(sql, 1, Integer.MAX_VALUE)).stream()
                            .map(e -> e.number() + " " + e.id() + " " + e.hash())
                            .collect(Collectors.toSet());
            assertThat(found).as(when).containsAll(acknowledged);
        }
    }
}
