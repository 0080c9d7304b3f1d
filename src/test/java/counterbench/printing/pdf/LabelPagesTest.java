package counterbench.printing.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.labels.Goods;
import counterbench.labels.Label;
import counterbench.labels.Labelled;
import counterbench.labels.LabelledCore;
import counterbench.labels.LabelledJob;
import counterbench.labels.LabelledKit;
import counterbench.labels.LabelledPart;
import counterbench.labels.LabelledShipment;
import counterbench.labels.gs1.CompanyPrefix;
import counterbench.labels.gs1.Sscc;
import counterbench.printing.LabelSheet;
import counterbench.printing.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LabelPagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 12, 31);

    @TempDir Path folder;

    /** One of each kind, and those that say the most and the least. */
    private static List<Label> labels() {
        Sscc sscc = Sscc.of(new CompanyPrefix("7610425"), 3, 2_123_456);
        return Stream.<Labelled>of(
                        new LabelledKit("NORTH", "K-2207", Goods.of("QM-4470-K", "QM26/1", DAY)),
                        new LabelledKit(
                                "NORTH",
                                "W".repeat(20),
                                Goods.of("M".repeat(30), "m".repeat(20), DAY)),
                        new LabelledPart("NORTH", "Seal washer", Goods.of("QM-4473", null, null)),
                        new LabelledJob("NORTH", "J-118", "QM-26-014", "0LKRF8D46NS000435", "W-7"),
                        new LabelledJob("NORTH", "J".repeat(90), "QM-26-014", "x", null),
                        new LabelledCore("NORTH", "C-0412", "J-118", "7P605544", "QM-4471"),
                        new LabelledCore("NORTH", "C", null, null, null),
                        new LabelledShipment("NORTH", "S-031", "Freight", "N631304607", null),
                        new LabelledShipment("NORTH", "S-031", "Freight", "N631304607", sscc))
                .map(Labelled::label)
                .toList();
    }

    private static List<Area> places(Paper paper, int skip, int count) {
        return IntStream.range(skip, skip + count)
                .mapToObj(place -> LabelPages.place(paper, place))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void a_scanner_reads_from_every_label_what_it_says(Paper paper) {
        Path file = folder.resolve("labels.pdf");
        new PdfPrinter().print(new LabelSheet(paper, 5, labels()), file);
        assertThat(SymbolScanner.scans(file, 0, places(paper, 5, labels().size())))
                .isEqualTo(labels().stream().map(l -> "]d2" + l.content().scanned()).toList());
    }

    @Test
    void people_read_the_same_and_more() {
        Path file = folder.resolve("labels.pdf");
        new PdfPrinter().print(new LabelSheet(Paper.LETTER, 0, labels()), file);
        assertThat(SymbolScanner.words(file))
                .contains("kit K-2207", "part QM-4470-K", "use by 2026-12-31")
                .contains("(17)261231(240)QM-4470-K(21)K-2207(10)QM26/1")
                .contains("job J-118", "VIN 0LKRF8D46NS000435", "(91)J-118")
                .contains("core C-0412", "serial 7P605544", "Drain and plug before")
                .contains("shipment S-031", "tracking N631304607", "SSCC 376104250021234569");
    }

    @ParameterizedTest
    @EnumSource
    void a_full_sheet_is_followed_by_another(Paper paper) {
        Path file = folder.resolve("labels.pdf");
        List<Label> many = Collections.nCopies(paper.labels(), labels().get(0));
        new PdfPrinter().print(new LabelSheet(paper, 1, many), file);
        assertThat(SymbolScanner.pages(file)).isEqualTo(2);
        assertThat(SymbolScanner.scans(file, 1, places(paper, 0, 1)))
                .containsExactly("]d2" + labels().get(0).content().scanned());
        List<Area> first = places(paper, 1, paper.labels() - 1);
        assertThat(SymbolScanner.scans(file, 0, first)).hasSize(paper.labels() - 1);
    }

    @Test
    void a_letter_that_cannot_be_drawn_shows_its_code() {
        Path file = folder.resolve("labels.pdf");
        Label odd =
                new LabelledPart("N", "\u4e2d N·m ≥ Ł\u202e\n2nd", Goods.of("Q", null, null))
                        .label();
        new PdfPrinter().print(new LabelSheet(Paper.A4, 0, List.of(odd)), file);
        assertThat(SymbolScanner.words(file)).contains("\\u4e2d N·m ≥ Ł\\u202e", "2nd");
    }
}
