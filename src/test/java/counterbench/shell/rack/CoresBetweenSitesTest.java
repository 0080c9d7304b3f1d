package counterbench.shell.rack;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Runner;
import counterbench.shell.Transcript;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cores go from yard to yard, as it is typed and seen. */
class CoresBetweenSitesTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void cores_go_to_another_yard_and_back_as_written_down(TestStores stores) throws Exception {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);

            Transcript.of("cores-between-sites")
                    .replay(new Runner(maren.commands()), maren.circumstances());
        }
    }
}
