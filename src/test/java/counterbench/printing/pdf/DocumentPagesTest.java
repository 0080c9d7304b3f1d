package counterbench.printing.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.labels.LabelContent;
import counterbench.printing.Block;
import counterbench.printing.Document;
import counterbench.printing.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentPagesTest {
    private static final List<Block.Column> COLUMNS =
            List.of(new Block.Column("step", 1), new Block.Column("what to do", 4));

    @TempDir Path folder;

    private Path drawn(Block... blocks) {
        Path file = folder.resolve("sheet.pdf");
        new PdfPrinter()
                .print(
                        new Document("Job J-118", Paper.LETTER, "North garage", List.of(blocks)),
                        file);
        return file;
    }

    @Test
    void everything_stands_there_in_its_order() {
        Path file =
                drawn(
                        new Block.Caution("Fuel under pressure can pierce skin."),
                        new Block.Heading("Procedure"),
                        new Block.Paragraph("41 N·m ± 10 %"),
                        new Block.Table(COLUMNS, List.of(List.of("clamp", "Tighten the bolts"))),
                        new Block.Symbol(LabelContent.ofJob("J-118")));
        assertThat(SymbolScanner.words(file))
                .containsSubsequence(
                        "Job J-118",
                        "Fuel under pressure can pierce skin.",
                        "Procedure",
                        "41 N·m ± 10 %",
                        "step",
                        "clamp",
                        "Tighten the bolts",
                        "(91)J-118",
                        "North garage")
                .contains("page 1 of 1");
    }

    @Test
    void a_symbol_in_a_document_can_be_scanned() {
        Path file = drawn(new Block.Symbol(LabelContent.ofJob("J-118")));
        assertThat(SymbolScanner.scans(file, 0, List.of(new Area(40, 60, 80, 100))))
                .containsExactly("]d291J-118");
    }

    @Test
    void a_long_table_says_its_headings_on_every_page() {
        List<List<String>> rows =
                IntStream.range(0, 120)
                        .mapToObj(i -> List.of("s" + i, "word ".repeat(40)))
                        .toList();
        Path file = drawn(new Block.Table(COLUMNS, rows));
        int pages = SymbolScanner.pages(file);
        String words = SymbolScanner.words(file);
        assertThat(pages).isGreaterThan(4);
        assertThat(words.split("what to do", -1)).hasSize(pages + 1);
        assertThat(words).contains("s0", "s119", "page " + pages + " of " + pages);
    }

    @Test
    void a_word_that_is_wider_than_the_page_is_broken() {
        Path file = drawn(new Block.Paragraph("x".repeat(400)));
        assertThat(SymbolScanner.words(file).chars().filter(c -> c == 'x')).hasSize(400);
    }

    @Test
    void a_row_with_too_few_cells_is_no_row() {
        assertThatThrownBy(() -> new Block.Table(COLUMNS, List.of(List.of("clamp"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_file_that_cannot_be_written_leaves_nothing_behind() throws IOException {
        Path file = Files.createDirectories(folder.resolve("sheet.pdf/full"));
        assertThatThrownBy(this::drawn).isInstanceOf(UncheckedIOException.class);
        assertThat(file).isDirectory();
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }
}
