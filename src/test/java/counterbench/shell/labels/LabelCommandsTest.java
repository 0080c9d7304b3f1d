package counterbench.shell.labels;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.home.Home;
import counterbench.printing.pdf.PdfPrinter;
import counterbench.printing.pdf.SymbolScanner;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels of the invented garage of the demo data. */
class LabelCommandsTest {
    private static Larkmere larkmere;

    @TempDir Path folder;

    @BeforeAll
    static void open() {
        larkmere = Larkmere.full(TestStores.H2);
    }

    @AfterAll
    static void close() {
        larkmere.close();
    }

    private FakeShell.Output label(String words) {
        LabelPress press =
                new LabelPress(larkmere::store, new SiteChoice(larkmere::store), PdfPrinter::new);
        LabelCommand[] commands =
                Stream.concat(
                                Stream.of(NamedThing.values())
                                        .map(thing -> new LabelNamedCommand(thing, press)),
                                Stream.of(new LabelPartCommand(press)))
                        .toArray(LabelCommand[]::new);
        return new FakeShell(commands)
                .with(Home.VARIABLE, folder.resolve("home").toString())
                .line("label " + words + " --site NORTH");
    }

    private String words(FakeShell.Output output) {
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        return SymbolScanner.words(Path.of(output.out().strip()));
    }

    @Test
    void it_says_where_the_labels_lie_and_how_to_print_them() {
        FakeShell.Output output = label("kit FP-1001 FP-1002 --copies 2 --paper a4 --skip 3");
        Path file = folder.resolve("home/exports/label-kit-NORTH-20260305-140000.pdf");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(output.out().strip()).isEqualTo(file.toAbsolutePath().toString());
        assertThat(output.messages())
                .containsExactly(
                        "4 labels on 1 sheet of A4 paper; print at full size, without fitting to"
                                + " the page");
        assertThat(words(output).split("kit FP-1001", -1)).hasSize(3);
    }

    @Test
    void every_kind_of_label_says_what_it_is_on() {
        assertThat(words(label("kit FP-1001")))
                .contains("kit FP-1001", "(17)260728(240)HB-3010-K(21)FP-1001(10)FP2601");
        folderIsEmptied();
        assertThat(words(label("job N-101"))).contains("job N-101", "(91)N-101", "HB-0417");
        folderIsEmptied();
        assertThat(words(label("core NC-0028")))
                .contains("core NC-0028", "(92)NC-0028", "job N-124", "Drain and plug");
        folderIsEmptied();
        assertThat(words(label("shipment SH-N01")))
                .contains("shipment SH-N01", "(93)SH-N01", "Two Rivers Freight");
        folderIsEmptied();
        assertThat(words(label("part HB-3013 --lot L-1 --expires 2026-12-31")))
                .contains("HB-3013", "(17)261231(240)HB-3013(10)L-1", "use by 2026-12-31");
    }

    private void folderIsEmptied() {
        try (Stream<Path> files = Files.list(folder.resolve("home/exports"))) {
            files.forEach(file -> assertThat(file.toFile().delete()).isTrue());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kit FP-101|kit \"FP-101\": the site never received it; did you mean FP-1001?",
                "kit XY|kit \"XY\": the site never received it; record its receipt first",
                "job N-1O1|job \"N-1O1\": the site has no such job; did you mean N-101?",
                "core NC-028|core \"NC-028\": no core of that tag was removed at the site; did you"
                        + " mean NC-0028?",
                "shipment SHN01|shipment \"SHN01\": the site has no such shipment; did you mean"
                        + " SH-N01?",
                "part HB3013|part \"HB3013\": no pack, list or receipt knows it; did you mean"
                        + " HB-3013?"
            })
    void a_name_that_nothing_bears_is_refused_with_a_near_one(String words, String message) {
        FakeShell.Output output = label(words);
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.messages()).containsExactly(message);
        assertThat(folder.resolve("home/exports")).doesNotExist();
    }

    @Test
    void places_and_copies_that_there_cannot_be_are_refused() {
        assertThat(label("kit FP-1001 --skip 30").messages())
                .contains("--skip \"30\" is not between 0 and 29");
        assertThat(label("kit FP-1001 --paper a4 --skip 24").messages())
                .contains("--skip \"24\" is not between 0 and 23");
        assertThat(label("kit FP-1001 --copies 0").messages())
                .contains("--copies \"0\" is not between 1 and 300");
    }

    @Test
    void a_file_is_written_over_only_when_that_is_said() {
        String line = "job N-101 --to \"" + folder.resolve("job.pdf") + "\"";
        assertThat(label(line).status()).isEqualTo(Status.DONE);
        assertThat(label(line).err()).contains("is there already; name another with --to");
        assertThat(label(line + " --replace").status()).isEqualTo(Status.DONE);
        assertThat(label("job N-101 --to \"" + folder.resolve("job.xlsx") + "\"").err())
                .contains("is no folder, and no name of a PDF file; end it in .pdf");
    }
}
