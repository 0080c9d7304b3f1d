package counterbench.shell.bench;

import counterbench.db.TestStores;
import counterbench.shell.Larkmere;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Jobs in the invented garage, done by whole command lines. */
class BenchCommandsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_job_goes_by_command_from_open_to_complete(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            BenchOfNorth.replay(larkmere, "job-by-command");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_cannot_be_is_refused_and_bad_news_is_recorded(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            BenchOfNorth.replay(larkmere, "bench-refusals");
        }
    }
}
