package counterbench.labels.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.labels.Goods;
import counterbench.labels.LabelledCore;
import counterbench.labels.LabelledJob;
import counterbench.labels.LabelledKit;
import counterbench.labels.LabelledPart;
import counterbench.labels.LabelledShipment;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Site;
import counterbench.shell.Larkmere;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What labels say of the invented garage of the demo data. */
class LabelBookTest {
    private static final LocalDate JULY = LocalDate.of(2026, 7, 28);

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void everything_that_bears_a_name_is_found_by_it(TestStores kind) {
        try (Larkmere larkmere = Larkmere.full(kind)) {
            LabelBook book = new LabelBook(larkmere.store(), Larkmere.NORTH);
            assertThat(book.kit("FP-1001"))
                    .contains(
                            new LabelledKit(
                                    "NORTH", "FP-1001", Goods.of("HB-3010-K", "FP2601", JULY)));
            assertThat(book.job("N-101"))
                    .contains(
                            new LabelledJob(
                                    "NORTH", "N-101", "HB-0417", "0LKRF8D46NS000435", "W26-1011"));
            assertThat(book.core("NC-0028"))
                    .contains(new LabelledCore("NORTH", "NC-0028", "N-124", "4D524374", "HB-5121"));
            assertThat(book.shipment("SH-N01"))
                    .contains(
                            new LabelledShipment(
                                    "NORTH", "SH-N01", "Two Rivers Freight", "N631304607", null));
            assertThat(book.names(FactKind.CORES)).contains("NC-0028").doesNotContain("SC-0001");
            parts(book);
            nothingIsFoundUnderANameThatNothingBears(book);
            numbered(larkmere.store());
        }
    }

    private static void parts(LabelBook book) {
        assertThat(book.part("HB-3003", "R-88", null))
                .contains(
                        new LabelledPart(
                                "NORTH",
                                "Seal ring 16 mm, older number",
                                Goods.of("HB-3003", "R-88", null)));
        assertThat(book.parts())
                .containsEntry("HB-3010-K", "kit of campaign HB-0417")
                .containsKey("HB-5121");
    }

    private static void nothingIsFoundUnderANameThatNothingBears(LabelBook book) {
        assertThat(book.kit("FP-9")).isEmpty();
        assertThat(book.job("S-201")).isEmpty();
        assertThat(book.core("NC-9")).isEmpty();
        assertThat(book.shipment("SH-9")).isEmpty();
        assertThat(book.part("HB-9", null, null)).isEmpty();
    }

    private static void numbered(Store store) {
        Site north = Larkmere.NORTH;
        Site withPrefix =
                new Site(
                        north.no(),
                        north.site(),
                        north.name(),
                        north.zone(),
                        north.currency(),
                        north.patience(),
                        "7610425");
        LabelBook book = new LabelBook(store, withPrefix);
        Set<String> numbers = new HashSet<>();
        for (String shipment : book.names(FactKind.SHIPMENTS)) {
            Sscc sscc = Objects.requireNonNull(book.shipment(shipment).orElseThrow().sscc());
            assertThat(sscc.digits()).startsWith("07610425");
            assertThat(numbers.add(sscc.digits())).isTrue();
            assertThat(book.shipment(sscc)).contains(shipment);
        }
        assertThat(numbers).hasSizeGreaterThan(5);
    }
}
