package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.KitListing;
import counterbench.acts.store.ShelfKits;
import counterbench.db.TestStores;
import counterbench.month.store.ForeignReader.Seen;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.counter.ExportCountSheetCommand;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExportCountSheetTest {
    @TempDir Path folder;

    private static FakeShell hal(Larkmere larkmere) {
        return larkmere.shellOf(
                Larkmere.HAL,
                new BaseCommand[] {
                    new ExportCountSheetCommand(
                            larkmere::store, larkmere.sites(), new WorkbookWriter())
                });
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void it_lists_what_may_lie_on_the_shelf_and_not_how_much(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            Path file = folder.resolve("shelf.xlsx");
            FakeShell hal = hal(larkmere);

            var written = hal.line("export count-sheet --to " + file);

            assertThat(written.status()).as(written.err()).isEqualTo(Status.DONE);
            Map<String, Seen> cells = ForeignReader.cells(file);
            List<String> kits = column(cells, "Kits!A");
            assertThat(kits)
                    .containsAll(
                            new ShelfKits(larkmere.store(), Larkmere.NORTH, Larkmere.AS_OF)
                                    .list(Optional.empty()).stream()
                                            .map(KitListing::serial)
                                            .toList())
                    .doesNotHaveDuplicates();
            assertThat(column(cells, "Store!A"))
                    .containsExactly("GR-90", "HB-3003", "HB-3013", "HB-3014");
            assertThat(column(cells, "Store!D")).isEmpty();
            assertThat(column(cells, "Kits!E")).isEmpty();
            assertThat(written.err())
                    .contains(
                            column(cells, "Store!A").size()
                                    + kits.size()
                                    + " lines to count at NORTH");
            assertThat(hal.line("export count-sheet --to " + file).err())
                    .contains("is there already")
                    .contains("--replace");
        }
    }

    /** What stands below a heading. */
    private static List<String> column(Map<String, Seen> cells, String column) {
        return cells.entrySet().stream()
                .filter(cell -> cell.getKey().matches(column + "[0-9]+"))
                .filter(cell -> !cell.getKey().equals(column + "1"))
                .map(cell -> cell.getValue().raw())
                .toList();
    }
}
