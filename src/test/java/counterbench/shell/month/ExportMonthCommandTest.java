package counterbench.shell.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.home.Home;
import counterbench.month.sheet.BookKind;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportMonthCommandTest {
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

    private FakeShell.Output export(String options) {
        SiteChoice sites = new SiteChoice(larkmere::store);
        return new FakeShell(
                        new ExportMonthCommand(
                                BookKind.PARTS, larkmere::store, sites, new WorkbookWriter()),
                        new ExportMonthCommand(
                                BookKind.WARRANTY, larkmere::store, sites, new WorkbookWriter()))
                .with(Home.VARIABLE, folder.resolve("home").toString())
                .line("export " + options.replace("FOLDER", "\"" + folder + "\""));
    }

    @Test
    void it_says_where_the_workbook_lies_and_what_it_knows() {
        FakeShell.Output output = export("parts --month 2026-02 --site NORTH --to FOLDER");
        Path file = folder.resolve("parts-NORTH-2026-02.xlsx");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(output.out().strip()).isEqualTo(file.toAbsolutePath().toString());
        assertThat(file).isNotEmptyFile();
        assertThat(output.messages())
                .last()
                .asString()
                .matches(
                        "the parts workbook of NORTH for 2026-02, as known at journal entry [0-9]+");
        assertThat(folder)
                .isDirectoryContaining(f -> f.equals(file))
                .isDirectoryNotContaining(f -> !f.equals(file));
    }

    @Test
    void without_a_place_it_goes_to_the_exports_in_the_home_folder() {
        FakeShell.Output output = export("warranty --month 2026-02 --site NORTH");
        Path file = folder.resolve("home/exports/warranty-NORTH-2026-02.xlsx");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(output.out().strip()).isEqualTo(file.toAbsolutePath().toString());
        assertThat(file).isNotEmptyFile();
    }

    @Test
    void a_month_that_goes_on_is_written_with_a_word_about_it() {
        FakeShell.Output output = export("warranty --month 2026-03 --site SOUTH --to FOLDER");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(output.messages())
                .contains("the month is not over yet; its last facts are still to come");
    }

    @Test
    void a_month_that_has_not_begun_is_refused() {
        FakeShell.Output output = export("parts --month 2026-04 --site NORTH --to FOLDER");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.messages())
                .containsExactly("month \"2026-04\": it has not begun; say a month up to 2026-03");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_file_is_written_over_only_when_that_is_said() throws IOException {
        Path file = Files.writeString(folder.resolve("parts-NORTH-2026-02.xlsx"), "mine");
        FakeShell.Output refused = export("parts --month 2026-02 --site NORTH --to FOLDER");
        assertThat(refused.status()).isEqualTo(Status.REFUSED);
        assertThat(refused.err()).contains("is there already; name another with --to");
        assertThat(file).hasContent("mine");
        FakeShell.Output output =
                export("parts --month 2026-02 --site NORTH --to FOLDER --replace");
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(Files.size(file)).isGreaterThan(1000);
    }

    @Test
    void a_place_that_no_workbook_can_have_is_refused() {
        String line = "parts --month 2026-02 --site NORTH --to ";
        assertThat(export(line + "\"" + folder.resolve("march.csv") + "\"").err())
                .contains("is no folder, and no name of a workbook; end it in .xlsx");
        assertThat(export(line + "\"" + folder.resolve("none/march.xlsx") + "\"").err())
                .contains("its folder is not there; make the folder, or name another");
    }

    @Test
    void the_month_must_be_said() {
        assertThat(export("parts --site NORTH").status()).isEqualTo(Status.USAGE);
    }
}
