package counterbench.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterbench.labels.gs1.ElementString;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Refused;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScanReaderTest {
    private static final ScanReader READER = new ScanReader(2026);
    private static final LocalDate DAY = LocalDate.of(2026, 12, 31);
    private static final Sscc SSCC = new Sscc("376104250021234569");

    private static void isReadFrom(ElementString content, Scan meaning) {
        assertThat(READER.read("]d2" + content.scanned())).isEqualTo(meaning);
        assertThat(READER.read("]C1" + content.scanned() + "\r\n")).isEqualTo(meaning);
        assertThat(READER.read(content.bracketed())).isEqualTo(meaning);
    }

    @Test
    void our_own_labels_are_read_as_what_they_are_on() {
        Goods goods = Goods.of("QM-4470-K", "QM26/1", DAY);
        isReadFrom(LabelContent.ofKit("K-2207", goods), new Scan.Kit("K-2207", goods));
        isReadFrom(LabelContent.ofPart(goods), new Scan.Part(goods));
        isReadFrom(
                LabelContent.ofPart(Goods.of("QM-4473", null, null)),
                new Scan.Part(Goods.of("QM-4473", null, null)));
        isReadFrom(LabelContent.ofJob("J-118"), new Scan.Job("J-118"));
        isReadFrom(LabelContent.ofCore("C-0412"), new Scan.Core("C-0412"));
        isReadFrom(LabelContent.ofShipment("S-031", null), new Scan.Shipment("S-031"));
        isReadFrom(LabelContent.ofShipment("S-031", SSCC), new Scan.ShippedUnit(SSCC));
    }

    /** The number from the tests of GS1's Barcode Syntax Engine. */
    @Test
    void a_makers_label_is_read_whatever_else_is_on_it() {
        Goods goods = new Goods("12345678901231", null, "L7", DAY);
        assertThat(READER.read("]d201123456789012311726123110L7\u001d21S9\u001d91OWN"))
                .isEqualTo(new Scan.Kit("S9", goods));
        assertThat(READER.read("(01)12345678901231(241)QM-4475"))
                .isEqualTo(new Scan.Part(new Goods("12345678901231", "QM-4475", null, null)));
    }

    @Test
    void the_day_00_and_the_century_are_told_by_the_year_of_reading() {
        Scan.Part read = (Scan.Part) READER.read("(240)QM-4475(17)280200");
        assertThat(read.goods().expiresOn()).isEqualTo("2028-02-29");
        assertThat(READER.read("(240)QM-4475(17)991231"))
                .isEqualTo(new Scan.Part(Goods.of("QM-4475", null, LocalDate.of(1999, 12, 31))));
        assertThatThrownBy(() -> new ScanReader(2060).read("(240)QM-4475(17)000229"))
                .hasMessage(
                        "scan \"(240)QM-4475(17)000229\": (17) 000229 is no day when read in 2060;"
                                + " type the kit or part instead");
    }

    @Test
    void a_separator_inside_shows_a_label_also_without_a_prefix() {
        Scan meaning = new Scan.Kit("K-2207", Goods.of("QM-4470-K", null, null));
        assertThat(READER.read("240QM-4470-K\u001d21K-2207")).isEqualTo(meaning);
        assertThat(READER.read("240QM-4470-K{GS}21K-2207")).isEqualTo(meaning);
    }

    @Test
    void what_shows_nothing_is_left_as_it_was_typed() {
        assertThat(READER.read(" 31 lbf·ft ")).isEqualTo(plain("31 lbf·ft"));
        assertThat(READER.read("")).isEqualTo(plain(""));
        assertThat(READER.read("(see note)")).isEqualTo(plain("(see note)"));
        assertThat(READER.read("]d1K-2207")).isEqualTo(plain("K-2207"));
        assertThat(READER.read("9105"))
                .isEqualTo(new Scan.Plain("9105", Optional.of(new Scan.Job("05"))));
        assertThat(READER.read("91J-118"))
                .isEqualTo(new Scan.Plain("91J-118", Optional.of(new Scan.Job("J-118"))));
    }

    private static Scan plain(String text) {
        return new Scan.Plain(text, Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"]d210L7", "(91)J-118(92)C-0412", "(21)K-2207", "(414)1234567890128"})
    void a_label_that_names_nothing_of_ours_is_refused(String text) {
        assertThatThrownBy(() -> READER.read(text))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("the label names no kit, part, job, core or shipment");
    }

    @ParameterizedTest
    @ValueSource(strings = {"]d2", "]d2J-118", "]C10112345678901234", "(01)123"})
    void a_label_that_cannot_be_read_is_refused(String text) {
        assertThatThrownBy(() -> READER.read(text))
                .isInstanceOf(Refused.class)
                .hasMessageEndingWith("scan the label again, or type what it stands for");
    }

    @Test
    void a_separator_at_the_end_shows_a_label_too() {
        assertThat(READER.read("91J-118\u001d")).isEqualTo(new Scan.Job("J-118"));
    }

    @Test
    void a_name_that_no_symbol_can_hold_is_refused() {
        assertThatThrownBy(() -> LabelContent.ofJob("J 118"))
                .hasMessage(
                        "a label of job \"J 118\": (91) J 118: GS1 labels have no \" \"; write it"
                                + " by hand; GS1 symbols take neither blanks nor letters other than"
                                + " A to Z and a to z");
        assertThatThrownBy(() -> LabelContent.ofKit("K".repeat(21), Goods.of("QM-1", null, null)))
                .hasMessageContaining("it has 21 characters, not 1 to 20");
    }
}
