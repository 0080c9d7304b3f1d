package counterbench.shell.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.printing.Block;
import counterbench.printing.Document;
import counterbench.printing.LabelSheet;
import counterbench.printing.Printer;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheet of a job, on the screen and for the printer. */
class JobSheetTest {
    @TempDir Path folder;

    /** Keeps what it should draw. */
    private static final class Tray implements Printer {
        private final List<Document> documents = new ArrayList<>();

        @Override
        public void print(LabelSheet sheet, Path file) {
            throw new AssertionError("no labels are asked for");
        }

        @Override
        public void print(Document document, Path file) {
            documents.add(document);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_sheet_has_the_steps_for_this_very_vehicle_with_cautions_and_what_is_open(
            TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            Tray tray = new Tray();
            FakeShell shell =
                    larkmere.shellOf(
                            Larkmere.OTIS,
                            new JobSheetCommand(larkmere::store, larkmere.sites(), () -> tray));

            assertThat(shell.line("job sheet N-169").out())
                    .contains("vehicle 0LKSP5D21PN002803, gearbox automatic")
                    .contains("caution: Fuel burns.")
                    .contains("lever-rest")
                    .contains("43.24 to 50.76 N·m (31.89 to 37.44 lbf·ft)")
                    .contains("6.5 min, 2026-04-10 11:19 Pilar")
                    .contains("HB-3013  kit FP-1051  4")
                    .contains("stop step-missing: job N-169: step mount");
            // A manual gearbox has no lever sensor.
            assertThat(shell.line("job sheet N-155").out())
                    .contains("gearbox manual")
                    .doesNotContain("lever-rest");
            assertThat(shell.line("job sheet N-l69").err()).contains("did you mean N-169?");

            var printed = shell.line("job sheet N-169 --to " + folder.resolve("n.pdf"));
            assertThat(printed.status()).as(printed.screen()).isEqualTo(Status.DONE);
            List<Block> blocks = tray.documents.get(0).blocks();
            assertThat(blocks.get(0)).isInstanceOf(Block.Symbol.class);
            assertThat(blocks.stream().filter(Block.Caution.class::isInstance)).hasSize(6);
            assertThat(blocks.stream().filter(Block.Table.class::isInstance)).hasSize(4);
        }
    }
}
