package counterbench.durability;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.Verification;
import counterbench.people.store.JooqSites;
import counterbench.shared.TestSites;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * An acknowledged entry survives the death of the process that recorded it, twenty times at random
 * moments on each kind of store.
 */
class KilledRecorderTest {
    private static final int KILLS = 20;
    private static final int MOST_ACTS = 40;
    private static final int LONGEST_NANOS = 4_000_000;

    private final long seed = System.nanoTime();
    private final Random random = new Random(seed);

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void every_acknowledged_entry_is_found_whole(TestStores kind) throws Exception {
        StoreAddress address = kind.address();
        try (Store store = TestStores.open(address)) {
            store.run(sql -> JooqSites.add(sql, TestSites.NORTH));
        }
        List<String> acknowledged = new ArrayList<>();
        VictimProcess next = VictimProcess.start(address);
        for (int kill = 1; kill <= KILLS; kill++) {
            try (VictimProcess victim = next.go()) {
                next = kill == KILLS ? victim : VictimProcess.start(address);
                acknowledged.addAll(killAtRandom(victim));
            }
            check(address, acknowledged, "seed " + seed + ", kill " + kill);
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS);
    }

    private List<String> killAtRandom(VictimProcess victim) throws Exception {
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
