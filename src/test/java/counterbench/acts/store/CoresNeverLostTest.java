package counterbench.acts.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.Larkmere;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Random acts on the racks of three sites. After each one, every core is in one place only, which
 * is the one that a naive map says.
 */
class CoresNeverLostTest {
    @ParameterizedTest
    @CsvSource({"H2,1,60", "POSTGRES,2,60"})
    void whatever_is_done_every_core_is_in_exactly_one_place(
            TestStores kind, long seed, int steps) {
        try (Larkmere larkmere = Larkmere.withPacks(kind)) {
            Yards yards = new Yards(larkmere, seed);
            yards.begin();
            for (int i = 0; i < steps; i++) {
                String done = yards.step();
                assertThat(yards.places())
                        .as("seed %d, step %d, after %s", seed, i, done)
                        .isEqualTo(yards.expected());
            }
            assertThat(yards.moved()).as("acts that moved a core").isGreaterThan(steps / 5);
            yards.verify();
        }
    }
}
