package counterbench.shell.bench;

import counterbench.db.TestStores;
import counterbench.shell.Larkmere;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The loop that takes scans. */
class BenchLoopTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_batch_of_scans_does_a_job_and_does_it_once(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            BenchOfNorth.replay(larkmere, "bench-loop");
        }
    }
}
