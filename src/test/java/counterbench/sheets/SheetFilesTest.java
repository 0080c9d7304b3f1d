package counterbench.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.FactKind;
import counterbench.sheets.poi.PoiSheets;
import counterbench.sheets.poi.XlsxFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFilesTest {
    @TempDir Path folder;

    @Test
    void a_folder_is_all_its_sheets_by_name() throws IOException {
        Read.file(folder, "uses-2026-03.csv", "");
        Read.file(folder, "Cores.part-2.CSV", "");
        Read.file(folder, "README.md", "");
        Read.file(folder, "QM-26-014.yaml", "");
        Read.file(folder, "~$uses.xlsx", "");
        Read.file(folder, ".hidden.csv", "");
        Files.createDirectory(folder.resolve("old.csv"));

        assertThat(PoiSheets.files().find(folder))
                .extracting(Sheet::kind)
                .containsExactly(FactKind.CORES, FactKind.USES);
    }

    @Test
    void a_name_that_is_no_kind_is_refused_naming_the_kinds() {
        assertThat(Read.refusal(Read.file(folder, "washers-2026.csv", "")).get(0))
                .startsWith(
                        "washers-2026.csv: the file's name says that \"washers\" is no kind of"
                                + " sheet; call it one of: people, parts, ")
                .contains("counts, claims, credits")
                .doesNotContain("settlements");
        assertThat(Read.refusal(Read.file(folder, "reversals.csv", ""))).hasSize(1);
    }

    @Test
    void other_endings_are_refused() {
        assertThat(Read.refusal(Read.file(folder, "uses.ods", "")))
                .containsExactly(
                        "uses.ods: is neither .csv nor .xlsx; save the sheet as one of these");
    }

    @Test
    void nothing_there_and_nothing_in_it_are_refused() {
        assertThat(Read.refusal(folder.resolve("gone.csv")).get(0)).contains("no such file");
        assertThat(Read.refusal(folder).get(0)).contains("holds no sheet");
        assertThat(Read.refusal(Read.file(folder, "uses.csv", " \n,,\n")))
                .containsExactly("uses.csv: is empty; the first row names the columns");
    }

    @Test
    void how_many_rows_there_are_is_judged_by_size() throws IOException {
        Path csv = Read.file(folder, "uses.csv", "job,part\n" + "J-1,P-1\n".repeat(20_000));
        assertThat(PoiSheets.files().aboutRows(PoiSheets.files().find(csv)))
                .isBetween(19_900L, 20_100L);
        Path xlsx = folder.resolve("marks.xlsx");
        try (SheetWriter writer = new XlsxFormat().write(xlsx)) {
            writer.sheet("marks");
            for (int i = 0; i < 20_000; i++) {
                writer.row(i + 1, List.of(Cell.text("a job with a name of its own")));
            }
            writer.finish();
        }
        assertThat(PoiSheets.files().aboutRows(PoiSheets.files().find(xlsx)))
                .isBetween(19_000L, 21_000L);
    }
}
